package simmerpoint.study.trace;

import java.util.function.ToDoubleFunction;
import simmerpoint.heat.PanLight;
import simmerpoint.heat.balance.CookingModel;
import simmerpoint.sampling.Estimate;
import simmerpoint.sampling.Replicates;
import simmerpoint.scenario.CookingSetup;
import simmerpoint.scenario.Scenario;
import simmerpoint.target.CaughtByFace;
import simmerpoint.target.TallyStatistics;

/**
 * The figure of merit that cookers, places and aims are judged by, from a catch of light: of a pan its cooking power ({@link
 * CookingModel#cookingPowerWatts}), of a bare disc the caught watts. No differential equation is solved for it.
 */
public final class UsefulPower {
    private final ToDoubleFunction<CaughtByFace> watts;

    /** For the target of {@code scenario} as it stands under its sun. */
    public UsefulPower(Scenario scenario) {
        watts = scenario.cooking().map(kitchen -> ofPan(scenario, kitchen)).orElse(CaughtByFace::underside);
    }

    private static ToDoubleFunction<CaughtByFace> ofPan(Scenario scenario, CookingSetup kitchen) {
        CookingModel cooking = kitchen.cooking();
        PanLight direct = PanIrradiation.direct(scenario, kitchen);
        return faces -> cooking.cookingPowerWatts(
                PanIrradiation.focused(faces, kitchen).plus(direct).absorbedBy(kitchen.vessel()));
    }

    /** Of each replicate alone, W. */
    public double[] byReplicate(TallyStatistics figures) {
        return figures.caughtByFaceOfReplicates().stream().mapToDouble(watts).toArray();
    }

    /** Mean of the replicates with its standard error. */
    public Estimate estimate(TallyStatistics figures) {
        return mean(byReplicate(figures));
    }

    /** Mean of {@link #byReplicate} with its standard error. */
    public static Estimate mean(double[] byReplicate) {
        return Replicates.mean(byReplicate.length, r -> byReplicate[r]);
    }
}
