package simmerpoint.pan;

/**
 * A bare disc that takes light from the dish's side and shades nothing.
 *
 * @param discMetres its diameter, above 0
 * @param leanRadians 0 = square to the axis; positive as a level pan leans: its normal tips towards +x (up)
 */
public record Plane(double discMetres, double leanRadians) implements Target {
    /** Checks both figures. */
    public Plane {
        if (!(discMetres > 0 && discMetres < 100)) {
            throw new IllegalArgumentException("disc " + discMetres + " m is not above 0");
        }
        if (!(Math.abs(leanRadians) < Math.PI / 2)) {
            throw new IllegalArgumentException("lean " + leanRadians + " rad is outside -pi/2 to pi/2");
        }
    }

    @Override
    public double radiusMetres() {
        return discMetres / 2;
    }
}
