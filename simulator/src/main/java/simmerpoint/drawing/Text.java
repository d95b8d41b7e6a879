package simmerpoint.drawing;

/**
 * One line of text at its place.
 *
 * @param words what is written
 * @param x its start, middle or end, as {@code anchor} says, units
 * @param y its baseline, units
 * @param style how it looks
 * @param anchor which part of it stands at {@code x}
 * @param size of its letters, units
 * @param room most that it may be wide, units: it gets smaller for it, then is cut with dots
 * @param least size down to which it gets smaller
 * @param degrees turned about its place, clockwise
 */
public record Text(
        String words,
        double x,
        double y,
        TextStyle style,
        Anchor anchor,
        double size,
        double room,
        double least,
        double degrees) {
    /** Size of usual letters, units. */
    public static final double SIZE = 12;

    /** Letters do not get smaller than this, units: 10 pixels on a phone, where a unit is nine tenths of one. */
    public static final double LEAST = 11;

    /** Which part of a text stands at its place. */
    public enum Anchor {
        /** It runs to the right from there. */
        START,
        /** It lies about it. */
        MIDDLE,
        /** It ends there. */
        END
    }

    /** A label that starts at a place. */
    public static Text at(double x, double y, String words) {
        return new Text(words, x, y, TextStyle.LABEL, Anchor.START, SIZE, Double.POSITIVE_INFINITY, LEAST, 0);
    }

    /** The same about its place. */
    public Text middle() {
        return anchored(Anchor.MIDDLE);
    }

    /** The same up to its place. */
    public Text end() {
        return anchored(Anchor.END);
    }

    /** The same with another part at its place. */
    public Text anchored(Anchor next) {
        return new Text(words, x, y, style, next, size, room, least, degrees);
    }

    /** The same in another style. */
    public Text in(TextStyle next) {
        return new Text(words, x, y, next, anchor, size, room, least, degrees);
    }

    /** The same in letters of another size. */
    public Text size(double next) {
        return new Text(words, x, y, style, anchor, next, room, Math.min(least, next), degrees);
    }

    /** The same with a room to keep in. */
    public Text within(double most) {
        return new Text(words, x, y, style, anchor, size, most, least, degrees);
    }

    /** The same turned about its place, clockwise. */
    public Text turned(double by) {
        return new Text(words, x, y, style, anchor, size, room, least, by);
    }

    /** The same with other words. */
    public Text words(String next) {
        return new Text(next, x, y, style, anchor, size, room, least, degrees);
    }

    /** The same elsewhere. */
    public Text moved(double toX, double toY) {
        return new Text(words, toX, toY, style, anchor, size, room, least, degrees);
    }
}
