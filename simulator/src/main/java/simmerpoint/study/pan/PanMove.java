package simmerpoint.study.pan;

import java.util.Arrays;
import java.util.List;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.FryingAssessment;
import simmerpoint.heat.FryingThresholds;
import simmerpoint.heat.balance.HeatLevelModel;
import simmerpoint.sampling.Estimate;

/** One move of the pan: what it gets at every place along it, and where its heat level changes. */
public final class PanMove {
    private static final int FINE = 400;

    private final MoveStudy.Move move;
    private final double presentMetres;
    private final double[] offsets;
    private final MoveLight light;
    private final HeatLevelModel levels;
    private final double area;
    private final List<PanPosition> positions;
    private final List<LevelBorder> borders;

    PanMove(
            MoveStudy.Move move,
            double presentMetres,
            double[] offsets,
            MoveLight light,
            HeatLevelModel levels,
            double undersideArea) {
        this.move = move;
        this.presentMetres = presentMetres;
        this.offsets = offsets.clone();
        this.light = light;
        this.levels = levels;
        area = undersideArea;
        positions = Arrays.stream(offsets).mapToObj(this::at).toList();
        borders = new BorderSearch(offsets, light::absorbed, levels).borders();
    }

    /** Along what. */
    public MoveStudy.Move move() {
        return move;
    }

    /** How far the scenario's stand has gone along this move from the focus, m: what its file says. */
    public double presentMetres() {
        return presentMetres;
    }

    /** The traced positions, in rising order; one of them is the scenario's own. */
    public List<PanPosition> positions() {
        return positions;
    }

    /** First offset looked at, m from the scenario's stand, at most 0. */
    public double fromMetres() {
        return offsets[0];
    }

    /** Last offset looked at, m, at least 0. */
    public double toMetres() {
        return offsets[offsets.length - 1];
    }

    /** Where the heat level changes, in rising order. */
    public List<LevelBorder> borders() {
        return borders;
    }

    /** The stretches between the borders; at least one. */
    public List<LevelStretch> stretches() {
        return LevelStretches.of(fromMetres(), toMetres(), borders, x -> levels.level(light.absorbed(x)));
    }

    /** Whether {@code offset} lies within what was looked at. */
    public boolean reaches(double offset) {
        return offset >= fromMetres() && offset <= toMetres();
    }

    /** The pan at any place in between, by the smooth curves through the traced positions. */
    public PanPosition at(double offset) {
        AbsorbedLight absorbed = light.absorbed(offset);
        double mean = light.undersideWatts(offset) / area;
        double caught = light.undersideWatts(offset) + light.wallWatts(offset) + light.lidWatts(offset);
        double middle = light.middleFlux(offset);
        double evenness = light.evenness(offset);
        return new PanPosition(
                offset,
                new Estimate(absorbed.total(), light.absorbedError(offset)),
                absorbed,
                levels.level(absorbed),
                light.peak(offset),
                light.wallPeak(offset),
                mean,
                caught > 0 ? light.wallWatts(offset) / caught : 0,
                caught > 0 ? light.undersideWatts(offset) / caught : 0,
                middle,
                evenness,
                FryingAssessment.read(middle, evenness, FryingThresholds.USUAL));
    }

    /** The place where the pan takes up most. */
    public PanPosition hottest() {
        double best = 0;
        double most = Double.NEGATIVE_INFINITY;
        for (int k = 0; k <= FINE; k++) {
            double x = fromMetres() + k * (toMetres() - fromMetres()) / FINE;
            double watts = light.absorbed(x).total();
            if (watts > most) {
                most = watts;
                best = x;
            }
        }
        return at(best);
    }
}
