package simmerpoint.study.pan;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import simmerpoint.sampling.Estimate;
import simmerpoint.sampling.MonotoneCubic;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.light.StoredLight;
import simmerpoint.study.trace.PartialProgress;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.CaughtByFace;
import simmerpoint.target.FluxMap;
import simmerpoint.target.HottestPatch;

/**
 * What only a full catch with its maps tells, at some of a move's positions and joined by smooth curves: hottest place,
 * evenness, light on the pan's middle, and at what slant and height light lands. The positions crowd about the one nearest
 * to the focus, where the hot spot changes fastest. All come from the same stored rays, so what one position has more than
 * another is known better than either; the hot spot is brought to the base's, which comes from a trace of its own.
 */
final class HotSpotCurves {
    /** Steps from the position nearest to the focus. */
    private static final int[] STEPS = {-20, -14, -9, -6, -4, -2, 0, 2, 4, 6, 9, 14, 20};

    /** The same for a slide, which hardly changes the hot spot but walks it to the pan's edge and off it. */
    private static final int[] SLIDE_STEPS = {-18, -15, -12, -9, -6, -3, 0, 3, 6, 9, 12, 15, 18};

    private static final int SQUARE = 3;

    private final double[] offsets;
    private final List<Seen> seen;
    private final double peakFactor;

    /** What is kept of one position; the maps are too large to keep. */
    private record Seen(
            Estimate peak, double wallPeak, double evenness, double middleFlux, CaughtByFace faces, double wallWatts) {
        static Seen of(TraceResult t) {
            return new Seen(
                    t.spot().peakFlux(),
                    HotSpotCurves.wallPeak(t),
                    t.spot().evenness().value(),
                    HotSpotCurves.middleFlux(t),
                    t.faces(),
                    t.ledger().wall().value());
        }
    }

    private HotSpotCurves(double[] offsets, List<Seen> seen, double peakFactor) {
        this.offsets = offsets;
        this.seen = seen;
        this.peakFactor = peakFactor;
    }

    /**
     * Catches stored light at some positions.
     *
     * @param base the scenario as it stands, already traced
     * @param light of the same dish under the same sun
     * @param move along what
     * @param grid the move's positions, one of them 0
     * @param progress told of it
     */
    static HotSpotCurves caught(
            TraceResult base, StoredLight light, MoveStudy.Move move, double[] grid, Progress progress) {
        double[] offsets = chosen(base.scenario(), move, grid);
        List<Seen> seen = new ArrayList<>();
        double peakFactor = 1;
        for (int k = 0; k < offsets.length; k++) {
            PartialProgress part =
                    new PartialProgress(progress, (double) k / offsets.length, (k + 1.0) / offsets.length);
            TraceResult there = light.catchFor(PanStudy.moved(base.scenario(), move, offsets[k]), part);
            if (offsets[k] == 0 && there.spot().peakFlux().value() > 0) {
                peakFactor =
                        base.spot().peakFlux().value() / there.spot().peakFlux().value();
            }
            seen.add(Seen.of(there));
        }
        return new HotSpotCurves(offsets, seen, peakFactor);
    }

    /** Every given position, already traced. */
    static HotSpotCurves of(double[] offsets, List<TraceResult> traced) {
        return new HotSpotCurves(offsets, traced.stream().map(Seen::of).toList(), 1);
    }

    private static double[] chosen(Scenario scenario, MoveStudy.Move move, double[] grid) {
        double focus = -move.of(scenario.stand());
        int nearest = 0;
        for (int k = 0; k < grid.length; k++) {
            nearest = Math.abs(grid[k] - focus) < Math.abs(grid[nearest] - focus) ? k : nearest;
        }
        TreeSet<Double> places = new TreeSet<>(List.of(grid[0], 0.0, grid[grid.length - 1]));
        for (int step : move == MoveStudy.Move.SLIDE ? SLIDE_STEPS : STEPS) {
            int k = nearest + step;
            if (k >= 0 && k < grid.length) {
                places.add(grid[k]);
            }
        }
        return places.stream().mapToDouble(Double::doubleValue).toArray();
    }

    MonotoneCubic peak() {
        return curve(t -> peakFactor * t.peak().value());
    }

    MonotoneCubic peakError() {
        return curve(t -> t.peak().standardError());
    }

    MonotoneCubic wallPeak() {
        return curve(Seen::wallPeak);
    }

    /** The hottest square of three cells by three on the wall, less one standard error. */
    static double wallPeak(TraceResult result) {
        return result.maps()
                .wall()
                .map(wall -> HottestPatch.of(wall, SQUARE, SQUARE, true))
                .orElse(0.0);
    }

    MonotoneCubic evenness() {
        return curve(Seen::evenness);
    }

    /** Light on the inner half of the underside's radius, mean, W/m². */
    MonotoneCubic middleFlux() {
        return curve(Seen::middleFlux);
    }

    static double middleFlux(TraceResult result) {
        FluxMap map = result.maps().caught();
        double inner = result.scenario().target().radiusMetres() / 2;
        double sum = 0;
        int cells = 0;
        for (int j = 0; j < map.rows(); j++) {
            for (int i = 0; i < map.columns(); i++) {
                if (Math.hypot(map.first(i), map.second(j)) <= inner) {
                    sum += map.at(i, j);
                    cells++;
                }
            }
        }
        return cells > 0 ? sum / cells : 0;
    }

    MonotoneCubic undersideAbsorptance() {
        return curve(t -> t.faces().underside() > 0 ? t.faces().undersideAbsorptance() : Double.NaN);
    }

    /** Relative absorptance of the wall's light below a height given as a share of the wall's. */
    MonotoneCubic wallAbsorptanceBelow(double line) {
        return curve(t -> t.faces().wallShareBelow(line) > 0 ? t.faces().wallAbsorptanceBelow(line) : Double.NaN);
    }

    /** The same above it. */
    MonotoneCubic wallAbsorptanceAbove(double line) {
        return curve(t -> t.wallWatts() > 0 && t.faces().wallShareBelow(line) < 1
                ? t.faces().wallAbsorptanceAbove(line)
                : Double.NaN);
    }

    MonotoneCubic lidAbsorptance() {
        return curve(t -> t.faces().lid() > 0 ? t.faces().lidAbsorptance() : Double.NaN);
    }

    /** Share of the wall's light below a height given as a share of the wall's. */
    MonotoneCubic wallShareBelow(double line) {
        return curve(t -> t.wallWatts() > 0 ? t.faces().wallShareBelow(line) : Double.NaN);
    }

    /** Through the positions where the figure exists; level at 1 if there are none. */
    private MonotoneCubic curve(ToDoubleFunction<Seen> figure) {
        int n = 0;
        double[] x = new double[offsets.length];
        double[] y = new double[offsets.length];
        for (int k = 0; k < offsets.length; k++) {
            double value = figure.applyAsDouble(seen.get(k));
            if (Double.isFinite(value)) {
                x[n] = offsets[k];
                y[n] = value;
                n++;
            }
        }
        return n == 0
                ? new MonotoneCubic(new double[] {0}, new double[] {1})
                : new MonotoneCubic(java.util.Arrays.copyOf(x, n), java.util.Arrays.copyOf(y, n));
    }
}
