package simmerpoint.scenario.keys;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import simmerpoint.units.Dimension;
import simmerpoint.units.QuantityException;
import simmerpoint.units.QuantityParser;
import simmerpoint.units.TypedQuantity;
import simmerpoint.units.UnitSystem;

/**
 * Which values a key takes. Read from the words that messages show, so the two cannot differ; only when somebody asks, since few of all
 * keys stand in one file.
 */
public final class KeyRange {
    private static final String ABOVE = "above ";
    private static final String BELOW = "below ";
    private static final String TO = " to ";
    private static final int END_DIGITS = 4;

    /** So far from an end that is itself not allowed, of 1 or of the whole range. */
    private static final double INSIDE = 1e-6;

    /** A number that went through radians and back is good to so many digits. */
    private static final MathContext TRUSTED = new MathContext(12);

    private final Dimension dimension;
    private final String words;
    private final boolean lowAllowed;
    private final boolean highAllowed;
    private volatile Ends ends;

    /** SI. */
    private record Ends(double low, double high) {}

    /** By "0 m to 9 m", "above 0 m to 9 m", "0 m to below 9 m", "above 0 m to below 9 m". */
    KeyRange(Dimension dimension, String words) {
        this.dimension = dimension;
        this.words = words;
        lowAllowed = !words.startsWith(ABOVE);
        highAllowed = !words.contains(TO + BELOW);
    }

    private Ends ends() {
        if (ends == null) {
            String bare = words.replace(ABOVE, "").replace(BELOW, "");
            int to = bare.indexOf(TO);
            ends = new Ends(si(dimension, bare.substring(0, to)), si(dimension, bare.substring(to + TO.length())));
        }
        return ends;
    }

    /** Least value, SI. */
    public double low() {
        return ends().low();
    }

    /** Greatest value, SI. */
    public double high() {
        return ends().high();
    }

    /** For instance "above 0° to 90°". */
    public String words() {
        return words;
    }

    private static double si(Dimension dimension, String text) {
        try {
            return QuantityParser.parse(text, dimension);
        } catch (QuantityException e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
    }

    /**
     * The same words in the unit that somebody typed: "0 % to 100 %" for who typed "500 %". Metric lengths are all told as
     * in {@link #words}. Ends are rounded to four digits, inwards, so that what is told is allowed.
     */
    public String wordsLike(String typed) {
        Optional<TypedQuantity> like = TypedQuantity.of(typed, dimension)
                .filter(q -> dimension != Dimension.LENGTH
                        || !q.in(UnitSystem.METRIC).equals(q));
        return like.map(q -> (lowAllowed ? "" : ABOVE)
                        + end(q, low(), RoundingMode.CEILING)
                        + TO
                        + (highAllowed ? "" : BELOW)
                        + end(q, high(), RoundingMode.FLOOR))
                .orElse(words);
    }

    private static String end(TypedQuantity like, double si, RoundingMode inwards) {
        BigDecimal number = BigDecimal.valueOf(like.numberOf(si))
                .round(TRUSTED)
                .round(new MathContext(END_DIGITS, inwards))
                .stripTrailingZeros();
        return like.withNumber(number.doubleValue(), Math.max(0, number.scale()))
                .text();
    }

    /** The value, or the nearest one inside. */
    public double nearest(double value) {
        double inside = INSIDE * Math.min(1, high() - low());
        double least = lowAllowed ? low() : low() + inside;
        double most = highAllowed ? high() : high() - inside;
        return Math.max(least, Math.min(most, value));
    }

    /** Whether the SI value lies inside; NaN does not. */
    public boolean contains(double value) {
        boolean highEnough = lowAllowed ? value >= low() : value > low();
        boolean lowEnough = highAllowed ? value <= high() : value < high();
        return highEnough && lowEnough;
    }
}
