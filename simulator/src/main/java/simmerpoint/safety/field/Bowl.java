package simmerpoint.safety.field;

import simmerpoint.dish.Aperture;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;

/**
 * The paraboloid z = r²/4f within its rim as an opaque surface, in the dish frame: what stops sunlight from behind and where reflected
 * light meets the mirror again when the sun stands far off the axis. A straight line p + t·d meets it at the roots of a
 * quadratic; from a point of the mirror itself one root is near 0, the other the wall across. Panels lie within millimetres
 * of it. Meshes of other shapes have no bowl. Not thread-safe.
 */
final class Bowl {
    /** No piece of light is shorter, so that a ray does not meet the place it starts from, m. */
    private static final double CLEAR = 1e-3;

    private final double inverse;
    private final Aperture rim;
    private final boolean exists;
    private double nearRoot;
    private double farRoot;

    Bowl(DishPlan dish) {
        inverse = 1 / (4 * dish.focalLengthMetres());
        rim = dish.aperture();
        exists = dish.cut().has(CutTrait.PARABOLOID);
    }

    /** Path from a point of the mirror to where the line meets the wall across, m; infinite if it does not. */
    double across(double[] p, double[] d) {
        return exists && roots(p, d) && within(p, d, farRoot) ? farRoot : Double.POSITIVE_INFINITY;
    }

    /** Whether the bowl stands between the place {@code p} and whatever lies along {@code d}. */
    boolean hides(double[] p, double[] d) {
        return exists && roots(p, d) && (within(p, d, nearRoot) || within(p, d, farRoot));
    }

    private boolean within(double[] p, double[] d, double t) {
        double x = p[0] + t * d[0] - rim.x();
        double y = p[1] + t * d[1] - rim.y();
        return t > CLEAR && x * x + y * y <= rim.radius() * rim.radius();
    }

    private boolean roots(double[] p, double[] d) {
        double a = inverse * (d[0] * d[0] + d[1] * d[1]);
        double half = inverse * (p[0] * d[0] + p[1] * d[1]) - d[2] / 2;
        double c = inverse * (p[0] * p[0] + p[1] * p[1]) - p[2];
        double under = half * half - a * c;
        if (!(under >= 0)) {
            return false;
        }
        double root = Math.sqrt(under);
        double q = half > 0 ? -half - root : -half + root;
        double one = a > 0 ? q / a : Double.POSITIVE_INFINITY;
        double other = q == 0 ? 0 : c / q;
        nearRoot = Math.min(one, other);
        farRoot = Math.max(one, other);
        return true;
    }

    /** Turns a ray that meets the bowl at {@code p} along {@code d} back into it. */
    void reflect(double[] p, double[] d) {
        double nx = -2 * inverse * p[0];
        double ny = -2 * inverse * p[1];
        double k = 2 * (d[0] * nx + d[1] * ny + d[2]) / (nx * nx + ny * ny + 1);
        d[0] -= k * nx;
        d[1] -= k * ny;
        d[2] -= k;
    }
}
