package simmerpoint.dish.built;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import simmerpoint.units.RangeCheck;

/**
 * Cloth or card hung over part of the mirror, to find out what the rest does. It lies on the mirror, so that it covers the same places
 * for light that comes and light that goes.
 *
 * @param part what it covers
 * @param widthMetres of a round one over the middle its diameter, of one along the rim how far it reaches inwards; 0 for all others
 */
public record Mask(Part part, double widthMetres) {
    /** No mask at all. */
    public static final Mask NONE = new Mask(Part.NONE, 0);

    /** What a mask covers. */
    public enum Part {
        /** Nothing. */
        NONE,
        /** A disc about the axis. */
        MIDDLE,
        /** A ring along the rim. */
        RIM,
        /** The half above the axis: +x. */
        UPPER,
        /** The half below the axis. */
        LOWER,
        /** The half to the left of whoever stands behind the dish: −y. */
        LEFT,
        /** The half to the right. */
        RIGHT;

        /** Its word in scenario files. */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** The part of that word. */
        public static Optional<Part> of(String word) {
            return Arrays.stream(values())
                    .filter(part -> part.word().equals(word))
                    .findFirst();
        }

        /** Whether it needs a width. */
        public boolean hasWidth() {
            return this == MIDDLE || this == RIM;
        }
    }

    /** Checks the width. */
    public Mask {
        if (part.hasWidth()) {
            RangeCheck.positive(widthMetres, "width of a mask");
        }
    }

    /** Whether there is one. */
    public boolean isThere() {
        return part != Part.NONE;
    }

    /**
     * Whether it covers a place.
     *
     * @param x towards the dish's upper edge, m
     * @param y sideways, m
     * @param radius of the dish, m
     */
    boolean covers(double x, double y, double radius) {
        return switch (part) {
            case NONE -> false;
            case MIDDLE -> Math.hypot(x, y) < widthMetres / 2;
            case RIM -> Math.hypot(x, y) > radius - widthMetres;
            case UPPER -> x > 0;
            case LOWER -> x < 0;
            case LEFT -> y < 0;
            case RIGHT -> y > 0;
        };
    }
}
