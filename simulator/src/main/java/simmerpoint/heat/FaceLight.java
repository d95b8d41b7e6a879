package simmerpoint.heat;

/**
 * Sunlight on one face.
 *
 * @param watts W, at least 0
 * @param relativeAbsorptance share of that light which a face absorbs that absorbs all light at normal incidence: the mean of
 *     {@link simmerpoint.pan.GrazingAbsorptance} over its rays, weighted with their watts, 0 to 1
 */
public record FaceLight(double watts, double relativeAbsorptance) {
    /** No light. */
    public static final FaceLight NONE = new FaceLight(0, 1);

    /** Checks both. */
    public FaceLight {
        ArgumentChecks.notNegative("light", watts, "W");
        ArgumentChecks.within("relative absorptance", relativeAbsorptance, 0, 1, "of 1");
    }

    /** The sum, with the mean relative absorptance. */
    public FaceLight plus(FaceLight other) {
        double sum = watts + other.watts;
        double absorbable = watts * relativeAbsorptance + other.watts * other.relativeAbsorptance;
        return sum > 0 ? new FaceLight(sum, Math.min(1, absorbable / sum)) : this;
    }
}
