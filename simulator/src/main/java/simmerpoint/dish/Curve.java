package simmerpoint.dish;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What curve the ribs are cut to. */
public enum Curve {
    /** z = r²/4f. */
    PARABOLA {
        @Override
        public Profile of(double focalLength, double rim) {
            return new Parabola(focalLength);
        }
    },
    /** A circle of radius 2f, which begins as the parabola does. */
    CIRCLE {
        @Override
        public Profile of(double focalLength, double rim) {
            return new CircleArc(2 * focalLength);
        }
    },
    /** A chain hung from both ends of the rim, as deep as the parabola. */
    HANGING_CHAIN {
        @Override
        public Profile of(double focalLength, double rim) {
            return HangingChain.through(rim, new Parabola(focalLength).height(rim));
        }
    };

    /** Where a circle is steeper than this at the rim, it is a pot and no dish. */
    private static final double STEEPEST_CIRCLE = 0.85;

    private final String word = name().toLowerCase(Locale.ROOT).replace('_', '-');

    /**
     * The curve of a dish.
     *
     * @param focalLength of the parabola it stands for, m
     * @param rim distance of the rim from the axis, m
     */
    public abstract Profile of(double focalLength, double rim);

    /** Greatest distance of a rim from the axis that it can have, m. */
    public double largestRim(double focalLength) {
        return this == CIRCLE ? STEEPEST_CIRCLE * 2 * focalLength : Double.POSITIVE_INFINITY;
    }

    /** Its word in scenario files. */
    public String word() {
        return word;
    }

    /** All words. */
    public static List<String> words() {
        return Arrays.stream(values()).map(Curve::word).toList();
    }

    /** The one of that word. */
    public static Curve of(String word) {
        return Arrays.stream(values())
                .filter(curve -> curve.word().equals(word))
                .findFirst()
                .orElseThrow();
    }
}
