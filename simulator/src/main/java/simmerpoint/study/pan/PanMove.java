package simmerpoint.study.pan;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
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
            double undersideArea,
            BorderSearch.Beginning beginning) {
        this.move = move;
        this.presentMetres = presentMetres;
        this.offsets = offsets.clone();
        this.light = light;
        this.levels = levels;
        area = undersideArea;
        positions = Arrays.stream(offsets).mapToObj(this::at).toList();
        borders = new BorderSearch(offsets, light::absorbed, levels, beginning).borders();
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
                light.cookingPower(offset),
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

    /** Whether {@code allowed} allows any place. */
    boolean anyOf(DoublePredicate allowed) {
        return fine().anyMatch(allowed);
    }

    /** The place of most cooking power, among those that {@code allowed} allows; empty if it allows none. */
    OptionalDouble best(DoublePredicate allowed) {
        OptionalDouble best = OptionalDouble.empty();
        double most = Double.NEGATIVE_INFINITY;
        for (double place : fine().filter(allowed).toArray()) {
            double watts = light.cookingPowerWatts(place);
            if (watts > most) {
                most = watts;
                best = OptionalDouble.of(place);
            }
        }
        return best;
    }

    /** First and last place about {@code best} up to which it has all but the share {@code less} of its cooking power, m. */
    double[] zone(double best, double less) {
        double least = (1 - less) * light.cookingPowerWatts(best);
        return new double[] {reach(best, -1, least), reach(best, 1, least)};
    }

    private double reach(double start, int way, double least) {
        double step = way * (toMetres() - fromMetres()) / FINE;
        double at = start;
        while (reaches(at + step) && light.cookingPowerWatts(at + step) >= least) {
            at += step;
        }
        return at;
    }

    private DoubleStream fine() {
        return IntStream.rangeClosed(0, FINE).mapToDouble(k -> fromMetres() + k * (toMetres() - fromMetres()) / FINE);
    }

    /** What the curve says of {@code offset} beyond where the pan stands, W: surer than either. */
    double gainWatts(double offset) {
        return light.cookingPowerWatts(offset) - light.cookingPowerWatts(0);
    }
}
