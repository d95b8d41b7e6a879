package simmerpoint.study.likely;

import java.util.Optional;
import java.util.function.UnaryOperator;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.HeatLevel;
import simmerpoint.heat.balance.HeatLevelModel;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.doubts.DrawnCooker;
import simmerpoint.scenario.doubts.ScenarioDoubts;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.uncertainty.LikelyRange;
import simmerpoint.uncertainty.Quantiles;

/** How much light the cooker as given must take up so that cookers as they may turn out just reach a heat level. */
public final class LikelyLight {
    /** 2^{@value} cookers: each end is good to some 0.15 of the range's width. */
    private static final int COOKERS = 6;

    /** Rays of each cooker: their noise, some hundredth and a half of the watts, is small beside the doubts. */
    private static final int BITS = 9;

    private final CookerDraws draws;

    private LikelyLight(CookerDraws draws) {
        this.draws = draws;
    }

    /** For the doubts of {@code read}. */
    public static LikelyLight of(CheckedScenario read, TraceOptions options) {
        return new LikelyLight(CookerDraws.of(ScenarioDoubts.of(read), COOKERS, options));
    }

    /**
     * Watts taken up by the pan as given with which one cooker in ten reaches {@code level}, half of them and nine in ten: each
     * cooker takes up so many times as much as that as given, and reaches the level with its own losses.
     *
     * @param level the level
     * @param given what the pan as given takes up at a place, W
     * @param there the scenario moved to that place
     */
    public LikelyRange beginning(HeatLevel level, AbsorbedLight given, UnaryOperator<Scenario> there) {
        double[] watts = draws.each(cooker -> watts(level, given, cooker.changed(there)), Progress.NONE).stream()
                .flatMap(Optional::stream)
                .mapToDouble(w -> w)
                .toArray();
        return watts.length == 0 ? LikelyRange.exact(given.total()) : new Quantiles(watts).likelyRange();
    }

    private double watts(HeatLevel level, AbsorbedLight given, DrawnCooker cooker) {
        HeatLevelModel levels = cooker.scenario().cooking().orElseThrow().heatLevels();
        AbsorbedLight absorbed = FewRayTrace.absorbed(cooker, BITS, draws.options());
        double needed = levels.thresholdWatts(level, absorbed, cooker.losses());
        return absorbed.total() > 0 ? needed * given.total() / absorbed.total() : Double.POSITIVE_INFINITY;
    }
}
