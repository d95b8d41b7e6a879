package simmerpoint.drawing;

/**
 * A circle.
 *
 * @param x of its middle, units
 * @param y of its middle, downwards
 * @param radius units
 */
public record Circle(double x, double y, double radius) implements Shape {}
