package simmerpoint.geometry;

/**
 * A point (m) or a free vector in some right-handed frame; the name of the variable says which frame.
 *
 * @param x first component
 * @param y second component
 * @param z third component
 */
public record Vec(double x, double y, double z) {
    /** The origin. */
    public static final Vec ZERO = new Vec(0, 0, 0);

    /** This plus {@code b}. */
    public Vec plus(Vec b) {
        return new Vec(x + b.x, y + b.y, z + b.z);
    }

    /** This minus {@code b}. */
    public Vec minus(Vec b) {
        return new Vec(x - b.x, y - b.y, z - b.z);
    }

    /** This times the number {@code k}. */
    public Vec times(double k) {
        return new Vec(k * x, k * y, k * z);
    }

    /** Scalar product. */
    public double dot(Vec b) {
        return x * b.x + y * b.y + z * b.z;
    }

    /** Vector product, this × {@code b}. */
    public Vec cross(Vec b) {
        return new Vec(y * b.z - z * b.y, z * b.x - x * b.z, x * b.y - y * b.x);
    }

    /** Length, in the unit of the components. */
    public double length() {
        return Math.sqrt(dot(this));
    }
}
