package simmerpoint.heat;

/**
 * Thresholds of the frying levels: flux absorbed by the centre of the pan. The defaults are those of a frying pan 24 cm
 * wide, 0.045 m², on a gas hob (derived here from {@link GasBurner}): a low flame of 100 to 250 W gives 2 to 6 kW/m², a
 * small burner on full 13, a medium one 18, a large one 23 kW/m². Which of them counts as gentle or searing is common
 * practice.
 *
 * @param gentleFlux where gentle frying begins, W/m²
 * @param fryFlux where frying begins, W/m²
 * @param searFlux where searing begins, W/m²
 * @param evenBelow standard deviation ÷ mean of flux up to which a pan heats evenly
 * @param patchyBelow the same up to which stirring is enough; above it the pan has a hot spot
 */
public record FryingThresholds(
        double gentleFlux, double fryFlux, double searFlux, double evenBelow, double patchyBelow) {
    /** The defaults above; the thresholds of evenness are our estimate, no source. */
    public static final FryingThresholds USUAL = new FryingThresholds(4_000, 10_000, 18_000, 0.3, 0.7);

    /** Checks the order. */
    public FryingThresholds {
        ArgumentChecks.positive("gentle frying", gentleFlux, "W/m²");
        if (!(fryFlux > gentleFlux && searFlux > fryFlux && evenBelow > 0 && patchyBelow > evenBelow)) {
            throw new IllegalArgumentException("borders of the frying scale are not in order");
        }
    }
}
