package simmerpoint.heat;

/**
 * Frying performance of a pan.
 *
 * @param level by the flux
 * @param spread by the evenness
 */
public record FryingAssessment(FryingLevel level, Spread spread) {
    /** Evenness of the heat. */
    public enum Spread {
        /** As a thick pan on a hob. */
        EVEN,
        /** Needs stirring. */
        PATCHY,
        /** Burns in one place while it stays pale elsewhere. */
        HOT_SPOT
    }

    /**
     * Applies the thresholds.
     *
     * @param meanFluxWattsPerSquareMetre absorbed flux, mean over the inner half of the underside's radius, W/m²
     * @param evenness standard deviation ÷ mean of flux over the underside, at least 0
     * @param thresholds the borders
     */
    public static FryingAssessment read(
            double meanFluxWattsPerSquareMetre, double evenness, FryingThresholds thresholds) {
        ArgumentChecks.notNegative("flux", meanFluxWattsPerSquareMetre, "W/m²");
        ArgumentChecks.notNegative("evenness", evenness, "of 1");
        return new FryingAssessment(
                level(meanFluxWattsPerSquareMetre, thresholds),
                evenness <= thresholds.evenBelow()
                        ? Spread.EVEN
                        : evenness <= thresholds.patchyBelow() ? Spread.PATCHY : Spread.HOT_SPOT);
    }

    private static FryingLevel level(double flux, FryingThresholds thresholds) {
        if (flux < thresholds.gentleFlux()) {
            return FryingLevel.NO_FRYING;
        }
        if (flux < thresholds.fryFlux()) {
            return FryingLevel.GENTLE;
        }
        return flux < thresholds.searFlux() ? FryingLevel.FRY : FryingLevel.SEAR;
    }
}
