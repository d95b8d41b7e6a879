package simmerpoint.heat;

/**
 * How far one real pan's losses differ from the correlations.
 *
 * @param dry factor on convection and radiation, above 0
 * @param evaporation factor on the vapour that a surface gives off below boiling, above 0
 */
public record LossFactors(double dry, double evaporation) {
    /** Losses as the correlations have them. */
    public static final LossFactors LIKELY = new LossFactors(1, 1);

    /** Checks both. */
    public LossFactors {
        ArgumentChecks.positive("factor of dry losses", dry, "");
        ArgumentChecks.positive("factor of evaporation", evaporation, "");
    }
}
