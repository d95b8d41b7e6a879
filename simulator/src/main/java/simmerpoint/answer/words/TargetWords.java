package simmerpoint.answer.words;

import simmerpoint.pan.Pan;
import simmerpoint.pan.Target;

/**
 * How to speak of what the light falls on.
 *
 * @param noun "pan" or "disc"
 * @param face where the light is meant to land, "underside" or "disc"
 * @param towardsPlusX words for a place on the +x side of the middle
 * @param towardsMinusX words for a place on the −x side
 * @param useful where the watts go that it is judged by, after them: "go into the water" or "land on the disc"
 * @param isPan whether it is a pan
 */
public record TargetWords(
        String noun, String face, String towardsPlusX, String towardsMinusX, String useful, boolean isPan) {
    /** Words for a place on the +y side: the right-hand side of someone who stands behind the dish and faces the sun. */
    public static final String RIGHT = "to the right (facing the sun)";

    /** Words for a place on the −y side. */
    public static final String LEFT = "to the left (facing the sun)";

    private static final TargetWords PAN =
            new TargetWords("pan", "underside", "away from the sun", "towards the sun", "go into the water", true);
    private static final TargetWords DISC = new TargetWords(
            "disc",
            "disc",
            "towards the dish's upper edge",
            "towards the dish's lower edge",
            "land on the disc",
            false);

    /** The words for {@code target}. */
    public static TargetWords of(Target target) {
        return target instanceof Pan ? PAN : DISC;
    }

    /** In which direction from the middle (x, y) lies: the nearest of the four. */
    public String side(double x, double y) {
        if (Math.abs(x) >= Math.abs(y)) {
            return x >= 0 ? towardsPlusX : towardsMinusX;
        }
        return y >= 0 ? RIGHT : LEFT;
    }
}
