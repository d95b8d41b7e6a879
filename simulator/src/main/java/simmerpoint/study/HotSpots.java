package simmerpoint.study;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import simmerpoint.scenario.Scenario;
import simmerpoint.target.FluxMap;

/**
 * What only a full catch with its maps tells, traced with fewer rays at some of a move's positions and joined by smooth
 * curves: hottest place, evenness, light on the pan's middle, and at what slant and height light lands. The positions
 * crowd about the one nearest to the focus, where the hot spot changes fastest.
 */
final class HotSpots {
    /** Steps from the position nearest to the focus. */
    private static final int[] STEPS = {-20, -8, -3, 0, 3, 8, 20};

    /** The same for a slide, which hardly changes the hot spot but walks it to the pan's edge and off it. */
    private static final int[] SLIDE_STEPS = {-15, -10, -5, 0, 5, 10, 15};

    private final double[] offsets;
    private final List<TraceResult> traced;

    private HotSpots(double[] offsets, List<TraceResult> traced) {
        this.offsets = offsets;
        this.traced = traced;
    }

    /**
     * Traces them.
     *
     * @param base the scenario as it stands, already traced
     * @param move along what
     * @param grid the move's positions, one of them 0
     * @param options with how many rays each
     * @param progress told of it
     */
    static HotSpots trace(
            TraceResult base, MoveStudy.Move move, double[] grid, TraceOptions options, Progress progress) {
        double[] offsets = chosen(base.scenario(), move, grid);
        List<TraceResult> traced = new ArrayList<>();
        for (int k = 0; k < offsets.length; k++) {
            Part part = new Part(progress, (double) k / offsets.length, (k + 1.0) / offsets.length);
            traced.add(offsets[k] == 0 ? base : PanStudy.traceAt(base.scenario(), move, offsets[k], options, part));
        }
        return new HotSpots(offsets, traced);
    }

    /** Every given position, already traced. */
    static HotSpots of(double[] offsets, List<TraceResult> traced) {
        return new HotSpots(offsets, traced);
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

    SmoothCurve peak() {
        return curve(t -> t.spot().peakFlux().value());
    }

    SmoothCurve peakError() {
        return curve(t -> t.spot().peakFlux().standardError());
    }

    SmoothCurve wallPeak() {
        return curve(HotSpots::wallPeak);
    }

    /** The hottest square of three cells by three on the wall, less one standard error, since a largest cell is biased high. */
    static double wallPeak(TraceResult result) {
        double most = 0;
        if (result.maps().wall().isPresent()) {
            FluxMap map = result.maps().wall().get();
            for (int j = 1; j + 1 < map.rows(); j++) {
                for (int i = 0; i < map.columns(); i++) {
                    most = Math.max(most, square(map, i, j));
                }
            }
        }
        return most;
    }

    private static double square(FluxMap map, int i, int j) {
        double sum = 0;
        double variance = 0;
        for (int dj = -1; dj <= 1; dj++) {
            for (int di = -1; di <= 1; di++) {
                int cell = (j + dj) * map.columns() + Math.floorMod(i + di, map.columns());
                sum += map.flux()[cell];
                variance += map.standardError()[cell] * map.standardError()[cell];
            }
        }
        return (sum - Math.sqrt(variance)) / 9;
    }

    SmoothCurve evenness() {
        return curve(t -> t.spot().evenness().value());
    }

    /** Light on the inner half of the underside's radius, mean, W/m². */
    SmoothCurve middleFlux() {
        return curve(HotSpots::middleFlux);
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

    SmoothCurve undersideCosine() {
        return curve(t -> t.faces().underside() > 0 ? t.faces().undersideCosine() : Double.NaN);
    }

    SmoothCurve wallCosine() {
        return curve(t -> t.ledger().wall().value() > 0 ? t.faces().wallCosine() : Double.NaN);
    }

    SmoothCurve lidCosine() {
        return curve(t -> t.faces().lid() > 0 ? t.faces().lidCosine() : Double.NaN);
    }

    /** Share of the wall's light below a height given as a share of the wall's. */
    SmoothCurve wallShareBelow(double line) {
        return curve(t -> t.ledger().wall().value() > 0 ? t.faces().wallShareBelow(line) : Double.NaN);
    }

    /** Through the positions where the figure exists; level at 1 if there are none. */
    private SmoothCurve curve(ToDoubleFunction<TraceResult> figure) {
        int n = 0;
        double[] x = new double[offsets.length];
        double[] y = new double[offsets.length];
        for (int k = 0; k < offsets.length; k++) {
            double value = figure.applyAsDouble(traced.get(k));
            if (Double.isFinite(value)) {
                x[n] = offsets[k];
                y[n] = value;
                n++;
            }
        }
        return n == 0
                ? new SmoothCurve(new double[] {0}, new double[] {1})
                : new SmoothCurve(java.util.Arrays.copyOf(x, n), java.util.Arrays.copyOf(y, n));
    }
}
