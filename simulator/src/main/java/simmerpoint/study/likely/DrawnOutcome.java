package simmerpoint.study.likely;

import simmerpoint.heat.HeatLevel;

/**
 * What one drawn cooker does.
 *
 * @param power cooking power, of a bare disc the caught watts, W
 * @param boilSeconds time to boil, s; infinite if it never does
 * @param settlesCelsius temperature it settles at, °C, at most local boiling
 * @param level heat level
 * @param simmerSpareWatts watts beyond what a simmer takes; below 0 it does not simmer
 * @param lightPerLoss light taken up ÷ factor of its dry losses, W
 */
record DrawnOutcome(
        double power,
        double boilSeconds,
        double settlesCelsius,
        HeatLevel level,
        double simmerSpareWatts,
        double lightPerLoss) {
    /** Of a bare disc. */
    static DrawnOutcome ofDisc(double caught) {
        return new DrawnOutcome(caught, Double.POSITIVE_INFINITY, 0, HeatLevel.TOO_COOL, 0, caught);
    }
}
