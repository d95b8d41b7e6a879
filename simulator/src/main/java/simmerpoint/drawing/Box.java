package simmerpoint.drawing;

/**
 * A rectangle.
 *
 * @param x left edge, units
 * @param y upper edge, units downwards
 * @param width units
 * @param height units
 */
public record Box(double x, double y, double width, double height) implements Shape {
    /** Right edge. */
    public double right() {
        return x + width;
    }

    /** Lower edge. */
    public double bottom() {
        return y + height;
    }

    /** Middle from left to right. */
    public double middleX() {
        return x + width / 2;
    }

    /** Middle from top to bottom. */
    public double middleY() {
        return y + height / 2;
    }

    /** What is left of it within margins; nowhere less than a unit wide or high. */
    public Box inside(double left, double top, double right, double bottom) {
        return new Box(x + left, y + top, Math.max(1, width - left - right), Math.max(1, height - top - bottom));
    }

    /** Whether it holds a point. */
    public boolean contains(double px, double py) {
        return px >= x && px <= right() && py >= y && py <= bottom();
    }
}
