package simmerpoint.dish.built;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import simmerpoint.dish.Aperture;
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
        /** A disc about the middle. */
        MIDDLE,
        /** A ring along the rim. */
        RIM,
        /** The half above the middle: +x. */
        UPPER,
        /** The half below the middle. */
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
     * @param rim of the dish
     */
    boolean covers(double x, double y, Aperture rim) {
        double up = x - rim.x();
        double right = y - rim.y();
        return switch (part) {
            case NONE -> false;
            case MIDDLE -> Math.hypot(up, right) < widthMetres / 2;
            case RIM -> Math.hypot(up, right) > rim.radius() - widthMetres;
            case UPPER -> up > 0;
            case LOWER -> up < 0;
            case LEFT -> right < 0;
            case RIGHT -> right > 0;
        };
    }
}
