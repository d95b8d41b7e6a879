package simmerpoint.study.day;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.heat.HeatLevel;
import simmerpoint.heat.HeatLevelRange;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.HeatResult;
import simmerpoint.study.trace.MaximumFlux;
import simmerpoint.target.Ledger;

/**
 * What the pan gets at one instant, traced anew for the sun's elevation then, and what that does to its water if it stayed
 * so. Two doubts, taken one at a time: the pan's losses at the likely beam, and the beam at the likely losses.
 *
 * @param ledger where the light goes at the likely beam
 * @param cookingPower net heat into the water at 50 K above the air, likely beam and losses, see {@link
 *     HeatResult#cookingPower}, W
 * @param lowPower the same at the lowest beam of the models, W
 * @param highPower the same at the highest beam of the models, W
 * @param lowWatts taken up at the lowest beam of the models, W
 * @param highWatts taken up at the highest beam of the models, W
 * @param level its heat level: lowest and highest hold both doubts
 * @param simmerSpareWatts watts beyond what a simmer takes, likely beam and losses; below 0 it does not simmer
 * @param boil when the pan's water boils at the likely beam
 * @param lowBeamBoilSeconds time to boil at the lowest beam, likely losses; empty if it never does
 * @param highBeamBoilSeconds time to boil at the highest beam, likely losses; empty if it never does
 * @param hottest flux of the hottest spot of the underside, W/m²
 * @param hottestFlux the hottest of all light, for cautions, see {@link MaximumFlux}, W/m²
 * @param begins cooking power with which each level begins for light that is shared between the faces as
 *     here, likely losses; infinite where such light never gets there; none if only the likely level was asked for
 * @param limits what keeps it from more, the greatest share first
 */
public record HourLight(
        Ledger ledger,
        Estimate cookingPower,
        double lowPower,
        double highPower,
        double lowWatts,
        double highWatts,
        HeatLevelRange level,
        double simmerSpareWatts,
        BoilingOutcome boil,
        OptionalDouble lowBeamBoilSeconds,
        OptionalDouble highBeamBoilSeconds,
        Estimate hottest,
        double hottestFlux,
        Map<HeatLevel, Double> begins,
        List<LightLimit> limits) {
    /** Copies the map and the list. */
    public HourLight {
        begins = Map.copyOf(begins);
        limits = List.copyOf(limits);
    }

    /** The flux that cautions go by, W/m²: of the hottest spot two standard errors more than is likely. */
    public double cautionFlux() {
        double peak = hottest.value() + 2 * hottest.standardError();
        return peak > hottestFlux ? peak : hottestFlux;
    }

    /** Taken up by the pan at the likely beam, W, with its error from sampling. */
    public Estimate absorbed() {
        return ledger.absorbed();
    }
}
