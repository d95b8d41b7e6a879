package simmerpoint.scenario;

import simmerpoint.units.Dimension;
import simmerpoint.units.QuantityException;
import simmerpoint.units.QuantityParser;

/**
 * Which values a key takes. Made from the same words that messages show, so the two cannot differ.
 *
 * @param low least value, SI
 * @param lowAllowed whether the least value itself is allowed
 * @param high greatest value, SI
 * @param highAllowed whether the greatest value itself is allowed
 * @param words for instance "above 0° to 90°"
 */
public record Range(double low, boolean lowAllowed, double high, boolean highAllowed, String words) {
    /** From {@code low} to {@code high}, both allowed. */
    static Range between(Dimension dimension, String low, String high) {
        return new Range(si(dimension, low), true, si(dimension, high), true, low + " to " + high);
    }

    /** From above {@code low} to {@code high}. */
    static Range above(Dimension dimension, String low, String high) {
        return new Range(si(dimension, low), false, si(dimension, high), true, "above " + low + " to " + high);
    }

    /** From {@code low} to below {@code high}. */
    static Range below(Dimension dimension, String low, String high) {
        return new Range(si(dimension, low), true, si(dimension, high), false, low + " to below " + high);
    }

    /** Between {@code low} and {@code high}, neither allowed. */
    static Range inside(Dimension dimension, String low, String high) {
        return new Range(si(dimension, low), false, si(dimension, high), false, "above " + low + " to below " + high);
    }

    private static double si(Dimension dimension, String text) {
        try {
            return QuantityParser.parse(text, dimension);
        } catch (QuantityException e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }

    /** Whether the SI value lies inside; NaN does not. */
    public boolean contains(double value) {
        boolean highEnough = lowAllowed ? value >= low : value > low;
        boolean lowEnough = highAllowed ? value <= high : value < high;
        return highEnough && lowEnough;
    }
}
