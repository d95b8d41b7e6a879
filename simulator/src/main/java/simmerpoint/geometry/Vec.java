package simmerpoint.geometry;

import java.util.List;

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

    /**
     * Vector area of a closed polygon, m²: its area along its normal, by half the sum of the vector products of neighbouring corners
     * (Newell's rule). Zero for fewer than three corners.
     */
    public static Vec area(List<Vec> corners) {
        Vec sum = ZERO;
        for (int k = 0; k < corners.size(); k++) {
            sum = sum.plus(corners.get(k).cross(corners.get((k + 1) % corners.size())));
        }
        return sum.times(0.5);
    }

    /** Mean of points, at least one. */
    public static Vec mean(List<Vec> points) {
        return points.stream().reduce(ZERO, Vec::plus).times(1.0 / points.size());
    }

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
