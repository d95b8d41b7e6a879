package simmerpoint.target;

/**
 * Where a ray first meets a closed upright cylinder that stands on the plane z = 0 about the z axis, or a bare disc in
 * that plane. The answer of {@link #meet} is kept in the fields; for one thread.
 */
final class Cylinder {
    static final int NOTHING = 0;
    static final int UNDERSIDE = 1;
    static final int WALL = 2;
    static final int LID = 3;

    private final double radius2;
    private final double height;
    private final boolean bare;

    /** Where it was met. */
    double x;

    double y;
    double z;
    /** Whether the ray crossed the plane z = 0 from below. */
    boolean crossed;
    /** How far the ray went to what it met, in lengths of its direction. */
    double reach;

    /** A cylinder of {@code height}, or a disc that is seen from below only if {@code bare}. */
    Cylinder(double radius, double height, boolean bare) {
        radius2 = radius * radius;
        this.height = height;
        this.bare = bare;
    }

    /** What the ray from (px, py, pz) along (dx, dy, dz), of any length, meets first. */
    int meet(double px, double py, double pz, double dx, double dy, double dz) {
        crossed = dz > 0 && pz < 0;
        if (crossed) {
            double t = -pz / dz;
            x = px + t * dx;
            y = py + t * dy;
            z = 0;
            reach = t;
            if (x * x + y * y <= radius2) {
                return UNDERSIDE;
            }
            return bare ? NOTHING : meetWall(x, y, 0, dx, dy, dz, t);
        }
        if (bare || pz < 0) {
            return NOTHING;
        }
        if (pz > height) {
            return fromAbove(px, py, pz, dx, dy, dz);
        }
        return meetWall(px, py, pz, dx, dy, dz, 0);
    }

    private int fromAbove(double px, double py, double pz, double dx, double dy, double dz) {
        if (!(dz < 0)) {
            return NOTHING;
        }
        double t = (height - pz) / dz;
        x = px + t * dx;
        y = py + t * dy;
        z = height;
        reach = t;
        if (x * x + y * y <= radius2) {
            return LID;
        }
        return meetWall(x, y, z, dx, dy, dz, t);
    }

    private int meetWall(double px, double py, double pz, double dx, double dy, double dz, double before) {
        double b = px * dx + py * dy;
        if (b >= 0) {
            return NOTHING;
        }
        double a = dx * dx + dy * dy;
        double c = px * px + py * py - radius2;
        double root2 = b * b - a * c;
        if (root2 <= 0) {
            return NOTHING;
        }
        double t = c > 0 ? c / (-b + Math.sqrt(root2)) : 0;
        z = pz + t * dz;
        if (z < 0 || z > height) {
            return NOTHING;
        }
        x = px + t * dx;
        y = py + t * dy;
        reach = before + t;
        return WALL;
    }
}
