package simmerpoint.study.day;

import java.util.List;
import java.util.Optional;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.heat.HeatLevel;
import simmerpoint.heat.HeatLevelRange;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.likely.LikelyMoment;
import simmerpoint.study.trace.MaximumFlux;
import simmerpoint.target.Ledger;
import simmerpoint.uncertainty.LikelyRange;

/**
 * What the pan gets at one instant, traced anew for the sun's elevation then, and what that does to its water if it stayed
 * so.
 *
 * @param ledger where the light goes
 * @param asGiven what that does to the water with every figure as given
 * @param hottest flux of the hottest spot of the underside, W/m²
 * @param hottestFlux the hottest of all light, for cautions, see {@link MaximumFlux}, W/m²
 * @param limits what keeps it from more, the greatest share first
 * @param likely what is likely over all doubts, if that was worked out
 */
public record HourLight(
        Ledger ledger,
        HourHeat asGiven,
        Estimate hottest,
        double hottestFlux,
        List<LightLimit> limits,
        Optional<LikelyMoment> likely) {
    /** Copies the list. */
    public HourLight {
        limits = List.copyOf(limits);
    }

    /** The same with what is likely. */
    HourLight withLikely(LikelyMoment found) {
        return new HourLight(ledger, asGiven, hottest, hottestFlux, limits, Optional.of(found));
    }

    /** Cooking power, W: likely, or that of the figures as given without a range. */
    public LikelyRange power() {
        return likely.map(LikelyMoment::power)
                .orElse(LikelyRange.exact(asGiven.power().value()));
    }

    /** When the water boils: likely, or as given. */
    public BoilingOutcome boil() {
        return likely.flatMap(l -> l.result().boil()).orElseGet(asGiven::boil);
    }

    /** Heat level: likely, or as given. */
    public HeatLevelRange level() {
        return likely.flatMap(l -> l.result().level()).orElseGet(() -> {
            HeatLevel level = asGiven.level();
            return new HeatLevelRange(level, level, level);
        });
    }

    /** Watts beyond what a simmer takes, below 0 it does not simmer: likely, or as given. */
    public LikelyRange simmerSpareWatts() {
        return likely.map(LikelyMoment::simmerSpareWatts)
                .orElseGet(() -> LikelyRange.exact(asGiven.simmerSpareWatts()));
    }

    /** The flux that cautions go by, W/m²: of the hottest spot two standard errors more than is likely. */
    public double cautionFlux() {
        double peak = hottest.value() + 2 * hottest.standardError();
        return peak > hottestFlux ? peak : hottestFlux;
    }

    /** Taken up by the pan, W, with its error from sampling. */
    public Estimate absorbed() {
        return ledger.absorbed();
    }
}
