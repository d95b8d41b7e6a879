package simmerpoint.heat;

/**
 * Sunlight on one face.
 *
 * @param watts W, at least 0
 * @param cosIncidence mean cosine of incidence of that light, weighted with its watts, 0 to 1
 */
public record FaceLight(double watts, double cosIncidence) {
    /** No light. */
    public static final FaceLight NONE = new FaceLight(0, 1);

    /** Checks both. */
    public FaceLight {
        ArgumentChecks.notNegative("light", watts, "W");
        ArgumentChecks.within("cosine of incidence", cosIncidence, 0, 1, "of 1");
    }

    /** The sum, with the mean cosine. */
    public FaceLight plus(FaceLight other) {
        double sum = watts + other.watts;
        return sum > 0
                ? new FaceLight(sum, Math.min(1, (watts * cosIncidence + other.watts * other.cosIncidence) / sum))
                : this;
    }
}
