package simmerpoint.dish.shape;

/** How far the surface lies above its plan at one place, added up over several deformations. Belongs to one thread. */
public final class Displacement {
    private double height;
    private double slopeX;
    private double slopeY;

    /** Back to nothing. */
    void clear() {
        height = 0;
        slopeX = 0;
        slopeY = 0;
    }

    /**
     * Adds a deformation's part.
     *
     * @param metres along the axis, towards the light
     * @param alongX its slope along x of the dish frame
     * @param alongY along y
     */
    void add(double metres, double alongX, double alongY) {
        height += metres;
        slopeX += alongX;
        slopeY += alongY;
    }

    /** Along the axis, towards the light, m. */
    public double height() {
        return height;
    }

    /** Its slope along x of the dish frame. */
    public double slopeX() {
        return slopeX;
    }

    /** Its slope along y. */
    public double slopeY() {
        return slopeY;
    }
}
