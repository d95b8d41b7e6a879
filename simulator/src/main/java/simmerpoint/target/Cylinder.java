package simmerpoint.target;

import simmerpoint.pan.Pan;
import simmerpoint.pan.Target;

/**
 * Intersection of rays with a closed upright cylinder that stands on the plane z = 0 about the z axis, or with a disc in
 * that plane. The fields hold the details of the last {@link #intersect}. Not thread-safe.
 */
final class Cylinder {
    static final int NOTHING = 0;
    static final int UNDERSIDE = 1;
    static final int WALL = 2;
    static final int LID = 3;

    private final double radius2;
    private final double height;
    private final boolean isDisc;

    /** Point of intersection, m. */
    double x;

    double y;
    double z;
    /** Whether the ray crosses the plane z = 0 from below. */
    boolean crossesBase;
    /** Distance to the intersection, in lengths of the ray's direction. */
    double rayParameter;

    /** A cylinder of {@code height}, or, if {@code isDisc}, a disc that only takes rays from below. */
    Cylinder(double radius, double height, boolean isDisc) {
        radius2 = radius * radius;
        this.height = height;
        this.isDisc = isDisc;
    }

    /** The body of a target: a pan, or a bare disc. */
    static Cylinder of(Target target) {
        double height = target instanceof Pan pan ? pan.heightMetres() : 0;
        return new Cylinder(target.radiusMetres(), height, !(target instanceof Pan));
    }

    /** The first face on the ray from (px, py, pz) along (dx, dy, dz), which may have any length. */
    int intersect(double px, double py, double pz, double dx, double dy, double dz) {
        crossesBase = dz > 0 && pz < 0;
        if (crossesBase) {
            double t = -pz / dz;
            x = px + t * dx;
            y = py + t * dy;
            z = 0;
            rayParameter = t;
            if (x * x + y * y <= radius2) {
                return UNDERSIDE;
            }
            return isDisc ? NOTHING : intersectWall(x, y, 0, dx, dy, dz, t);
        }
        if (isDisc || pz < 0) {
            return NOTHING;
        }
        if (pz > height) {
            return fromAbove(px, py, pz, dx, dy, dz);
        }
        return intersectWall(px, py, pz, dx, dy, dz, 0);
    }

    private int fromAbove(double px, double py, double pz, double dx, double dy, double dz) {
        if (!(dz < 0)) {
            return NOTHING;
        }
        double t = (height - pz) / dz;
        x = px + t * dx;
        y = py + t * dy;
        z = height;
        rayParameter = t;
        if (x * x + y * y <= radius2) {
            return LID;
        }
        return intersectWall(x, y, z, dx, dy, dz, t);
    }

    private int intersectWall(double px, double py, double pz, double dx, double dy, double dz, double before) {
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
        rayParameter = before + t;
        return WALL;
    }
}
