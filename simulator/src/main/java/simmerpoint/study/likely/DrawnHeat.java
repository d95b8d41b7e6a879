package simmerpoint.study.likely;

import java.util.OptionalDouble;
import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.HeatLevel;
import simmerpoint.heat.balance.CookingModel;
import simmerpoint.heat.balance.HeatLevelModel;
import simmerpoint.heat.losses.LossFactors;
import simmerpoint.scenario.CookingSetup;
import simmerpoint.scenario.doubts.DrawnCooker;

/**
 * What the pan of one drawn cooker does with light.
 *
 * @param cooking its pan, water and weather
 * @param levels its heat levels
 * @param losses factors of its losses
 */
record DrawnHeat(CookingModel cooking, HeatLevelModel levels, LossFactors losses) {
    static DrawnHeat of(DrawnCooker cooker) {
        CookingSetup kitchen = cooker.scenario().cooking().orElseThrow();
        return new DrawnHeat(kitchen.cooking(), kitchen.heatLevels(), cooker.losses());
    }

    DrawnOutcome in(AbsorbedLight absorbed) {
        OptionalDouble boils = cooking.quickBoilSeconds(absorbed, losses);
        return new DrawnOutcome(
                power(absorbed),
                boils.orElse(Double.POSITIVE_INFINITY),
                boils.isPresent() ? cooking.boilingCelsius() : cooking.settlingCelsius(absorbed, losses),
                levels.level(absorbed, losses),
                spare(HeatLevel.SIMMER, absorbed),
                absorbed.total() / losses.dry());
    }

    /** Cooking power, W. */
    double power(AbsorbedLight absorbed) {
        return cooking.cookingPowerWatts(absorbed, losses);
    }

    /** Watts beyond what {@code level} takes; below 0 it does not get there. */
    double spare(HeatLevel level, AbsorbedLight absorbed) {
        return levels.spareWatts(level, absorbed, losses);
    }
}
