package simmerpoint.heat;

/**
 * How a pan fries.
 *
 * @param level by the flux
 * @param spread by the evenness
 */
public record FryingAssessment(FryingLevel level, Spread spread) {
    /** How evenly a pan heats. */
    public enum Spread {
        /** As a thick pan on a hob. */
        EVEN,
        /** Needs stirring. */
        PATCHY,
        /** Burns in one place while it stays pale elsewhere. */
        HOT_SPOT
    }

    /**
     * Reads the scale.
     *
     * @param meanFluxWattsPerSquareMetre flux that the middle of the pan takes up (absorptance counted), mean over the
     *     inner half of the underside's radius, W/m²
     * @param evenness standard deviation ÷ mean of flux over the underside, at least 0
     * @param table the borders
     */
    public static FryingAssessment read(double meanFluxWattsPerSquareMetre, double evenness, FryingThresholds table) {
        ArgumentChecks.notNegative("flux", meanFluxWattsPerSquareMetre, "W/m²");
        ArgumentChecks.notNegative("evenness", evenness, "of 1");
        return new FryingAssessment(
                level(meanFluxWattsPerSquareMetre, table),
                evenness <= table.evenBelow()
                        ? Spread.EVEN
                        : evenness <= table.patchyBelow() ? Spread.PATCHY : Spread.HOT_SPOT);
    }

    private static FryingLevel level(double flux, FryingThresholds table) {
        if (flux < table.gentleFlux()) {
            return FryingLevel.NO_FRYING;
        }
        if (flux < table.fryFlux()) {
            return FryingLevel.GENTLE;
        }
        return flux < table.searFlux() ? FryingLevel.FRY : FryingLevel.SEAR;
    }
}
