package simmerpoint.heat.losses;

import simmerpoint.heat.ArgumentChecks;

/**
 * Factors of one pan's losses relative to the correlations.
 *
 * @param dry factor on convection and radiation, above 0
 * @param evaporation factor on evaporation below boiling, above 0
 */
public record LossFactors(double dry, double evaporation) {
    /** Losses by the correlations. */
    public static final LossFactors LIKELY = new LossFactors(1, 1);

    /** Checks both. */
    public LossFactors {
        ArgumentChecks.positive("factor of dry losses", dry, "");
        ArgumentChecks.positive("factor of evaporation", evaporation, "");
    }
}
