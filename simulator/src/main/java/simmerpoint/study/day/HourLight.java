package simmerpoint.study.day;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.heat.HeatLevel;
import simmerpoint.heat.HeatLevelRange;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.likely.LikelyMoment;
import simmerpoint.study.trace.HeatResult;
import simmerpoint.study.trace.MaximumFlux;
import simmerpoint.target.Ledger;
import simmerpoint.uncertainty.LikelyRange;

/**
 * What the pan gets at one instant, traced anew for the sun's elevation then, and what that does to its water if it stayed
 * so.
 *
 * @param ledger where the light goes
 * @param faces what its faces take up
 * @param powerAsGiven net heat into the water at 50 K above the air with every figure as given, see {@link
 *     HeatResult#cookingPower}, W
 * @param levelAsGiven heat level with every figure as given
 * @param spareAsGiven watts beyond what a simmer takes with every figure as given
 * @param boilAsGiven when the pan's water boils with every figure as given, without its range
 * @param hottest flux of the hottest spot of the underside, W/m²
 * @param hottestFlux the hottest of all light, for cautions, see {@link MaximumFlux}, W/m²
 * @param begins cooking power with which each level begins for light that is shared between the faces as
 *     here, likely losses; infinite where such light never gets there
 * @param limits what keeps it from more, the greatest share first
 * @param likely what is likely over all doubts, if that was worked out
 */
public record HourLight(
        Ledger ledger,
        AbsorbedLight faces,
        Estimate powerAsGiven,
        HeatLevel levelAsGiven,
        double spareAsGiven,
        BoilingOutcome boilAsGiven,
        Estimate hottest,
        double hottestFlux,
        Map<HeatLevel, Double> begins,
        List<LightLimit> limits,
        Optional<LikelyMoment> likely) {
    /** Copies the map and the list. */
    public HourLight {
        begins = Map.copyOf(begins);
        limits = List.copyOf(limits);
    }

    /** The same with what is likely. */
    HourLight withLikely(LikelyMoment found) {
        return new HourLight(
                ledger,
                faces,
                powerAsGiven,
                levelAsGiven,
                spareAsGiven,
                boilAsGiven,
                hottest,
                hottestFlux,
                begins,
                limits,
                Optional.of(found));
    }

    /** Cooking power, W: likely, or that of the figures as given without a range. */
    public LikelyRange power() {
        return likely.map(l -> l.result().power()).orElse(LikelyRange.exact(powerAsGiven.value()));
    }

    /** When the water boils: likely, or as given. */
    public BoilingOutcome boil() {
        return likely.flatMap(l -> l.result().boil()).orElse(boilAsGiven);
    }

    /** Heat level: likely, or as given. */
    public HeatLevelRange level() {
        return likely.flatMap(l -> l.result().level())
                .orElse(new HeatLevelRange(levelAsGiven, levelAsGiven, levelAsGiven));
    }

    /** Watts beyond what a simmer takes, below 0 it does not simmer: likely, or as given. */
    public LikelyRange simmerSpareWatts() {
        return likely.map(LikelyMoment::simmerSpareWatts).orElse(LikelyRange.exact(spareAsGiven));
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
