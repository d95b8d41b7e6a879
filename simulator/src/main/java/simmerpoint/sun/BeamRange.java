package simmerpoint.sun;

/**
 * Beam irradiance with the range of published models and of the air's turbidity.
 *
 * @param lowWattsPerSquareMetre lowest of them, W/m², at least 0
 * @param likelyWattsPerSquareMetre the middle of them, to calculate with, W/m², not below low
 * @param highWattsPerSquareMetre highest of them, W/m², not below likely
 */
public record BeamRange(
        double lowWattsPerSquareMetre, double likelyWattsPerSquareMetre, double highWattsPerSquareMetre) {
    /** No sun. */
    public static final BeamRange NONE = new BeamRange(0, 0, 0);

    /** Checks the order. */
    public BeamRange {
        if (!(lowWattsPerSquareMetre >= 0
                && likelyWattsPerSquareMetre >= lowWattsPerSquareMetre
                && highWattsPerSquareMetre >= likelyWattsPerSquareMetre
                && highWattsPerSquareMetre < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("beam of " + lowWattsPerSquareMetre + " / " + likelyWattsPerSquareMetre
                    + " / " + highWattsPerSquareMetre + " W/m2 is not in rising order from 0");
        }
    }
}
