package simmerpoint.heat.balance;

import java.util.Collections;
import java.util.List;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.HeatLevel;
import simmerpoint.heat.HeatLevelRange;
import simmerpoint.heat.HeatLevelThresholds;
import simmerpoint.heat.SaturatedWater;
import simmerpoint.heat.losses.LossFactors;
import simmerpoint.heat.losses.LossSpread;
import simmerpoint.uncertainty.LikelyRange;

/**
 * The heat level of one pan in given light, and the absorbed watts at which a level begins for this pan, lid, wind and
 * altitude, from the energy balance: every threshold is a temperature to be held or steam to be made.
 */
public final class HeatLevelModel {
    private static final double HOUR = 3600;

    private final CookingModel cooking;
    private final HeatLevelThresholds thresholds;

    /** For one pan and its weather. */
    public HeatLevelModel(CookingModel cooking, HeatLevelThresholds thresholds) {
        this.cooking = cooking;
        this.thresholds = thresholds;
    }

    /** The level with the likely losses. */
    public HeatLevel level(AbsorbedLight absorbed) {
        return level(cooking.likelyPot(), absorbed);
    }

    /** The level with given losses. */
    public HeatLevel level(AbsorbedLight absorbed, LossFactors factors) {
        return level(cooking.pot(factors), absorbed);
    }

    /** The level with its range. */
    public HeatLevelRange levelWithSpread(AbsorbedLight absorbed) {
        HeatLevel likely = level(absorbed);
        List<HeatLevel> levels =
                LossSpread.all().stream().map(f -> level(absorbed, f)).sorted().toList();
        int tenth = levels.size() / 10;
        return new HeatLevelRange(
                Collections.min(List.of(likely, levels.get(tenth))),
                likely,
                Collections.max(List.of(likely, levels.get(levels.size() - 1 - tenth))));
    }

    private HeatLevel level(PotModel pot, AbsorbedLight absorbed) {
        HeatLevel[] all = HeatLevel.values();
        for (int k = all.length - 1; k > 0; k--) {
            if (surplus(pot, all[k], absorbed) >= 0) {
                return all[k];
            }
        }
        return HeatLevel.TOO_COOL;
    }

    /**
     * Surplus of absorbed watts over the threshold of a level, with the likely losses: 0 at the threshold and smooth, for
     * root finding.
     *
     * @param level not {@link HeatLevel#TOO_COOL}, which begins nowhere
     */
    public double spareWatts(HeatLevel level, AbsorbedLight absorbed) {
        return surplus(cooking.likelyPot(), level, absorbed);
    }

    /** The same with given losses, W. */
    public double spareWatts(HeatLevel level, AbsorbedLight absorbed, LossFactors factors) {
        return surplus(cooking.pot(factors), level, absorbed);
    }

    /**
     * Absorbed watts at which a level begins; 0 for {@link HeatLevel#TOO_COOL}, infinite if no amount of this light reaches
     * it.
     *
     * @param level the level
     * @param pattern distribution of the light over the faces; its sum does not matter
     */
    public LikelyRange thresholdWatts(HeatLevel level, AbsorbedLight pattern) {
        return level == HeatLevel.TOO_COOL
                ? LikelyRange.exact(0)
                : LossSpread.range(f -> thresholdWatts(cooking.pot(f), level, pattern));
    }

    /** The same for the likely losses, W. */
    public double likelyThresholdWatts(HeatLevel level, AbsorbedLight pattern) {
        return level == HeatLevel.TOO_COOL ? 0 : thresholdWatts(cooking.likelyPot(), level, pattern);
    }

    /** The same for given losses, W. */
    public double thresholdWatts(HeatLevel level, AbsorbedLight pattern, LossFactors factors) {
        return level == HeatLevel.TOO_COOL ? 0 : thresholdWatts(cooking.pot(factors), level, pattern);
    }

    private double thresholdWatts(PotModel pot, HeatLevel level, AbsorbedLight pattern) {
        return SteadyState.wattsFor(pot, pattern, thresholdCelsius(pot, level), steamWatts(pot, level));
    }

    private double surplus(PotModel pot, HeatLevel level, AbsorbedLight absorbed) {
        return pot.surplusWatts(thresholdCelsius(pot, level), absorbed) - steamWatts(pot, level);
    }

    private double thresholdCelsius(PotModel pot, HeatLevel level) {
        return switch (level) {
            case TOO_COOL -> throw new IllegalArgumentException("the coolest level begins nowhere");
            case KEEP_WARM -> Math.min(thresholds.holdCelsius(), pot.boilingCelsius());
            case SIMMER -> pot.boilingCelsius() - thresholds.simmerKelvinBelowBoiling();
            case BOIL, FAST_BOIL -> pot.boilingCelsius();
        };
    }

    /** Latent heat of the steam at the level's threshold, W. */
    private double steamWatts(PotModel pot, HeatLevel level) {
        double steam = switch (level) {
            case TOO_COOL, KEEP_WARM, SIMMER -> 0;
            case BOIL -> thresholds.boilSteam();
            case FAST_BOIL -> thresholds.fastBoilSteam();
        };
        return steam
                * cooking.vessel().levelArea()
                / HOUR
                * SaturatedWater.latentHeatJoulesPerKilogram(pot.boilingCelsius());
    }
}
