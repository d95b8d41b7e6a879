package simmerpoint.drawing;

/**
 * A rectangle with round corners.
 *
 * @param box without them
 * @param corner their radius, units
 */
public record RoundBox(Box box, double corner) implements Shape {}
