package simmerpoint.drawing;

/** A chart, map or drawing that can be drawn at any size on any canvas. */
public interface Drawing {
    /** The height that suits it where it is {@code width} wide, units. */
    double height(double width, TextMetrics metrics);

    /** Draws everything within {@code box}. */
    void draw(Canvas canvas, Box box);
}
