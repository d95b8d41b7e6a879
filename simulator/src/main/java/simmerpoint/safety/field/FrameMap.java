package simmerpoint.safety.field;

import java.util.function.UnaryOperator;
import simmerpoint.geometry.Vec;

/** A map of points from one frame to another that keeps lengths, as plain numbers for loops over many rays. */
final class FrameMap {
    private final double[] m = new double[9];
    private final double[] origin = new double[3];

    /** The map that {@code point} does, which is linear but for a shift. */
    FrameMap(UnaryOperator<Vec> point) {
        Vec o = point.apply(Vec.ZERO);
        store(origin, 0, 1, o);
        store(m, 0, 3, point.apply(new Vec(1, 0, 0)).minus(o));
        store(m, 1, 3, point.apply(new Vec(0, 1, 0)).minus(o));
        store(m, 2, 3, point.apply(new Vec(0, 0, 1)).minus(o));
    }

    private static void store(double[] into, int from, int step, Vec v) {
        into[from] = v.x();
        into[from + step] = v.y();
        into[from + 2 * step] = v.z();
    }

    /** The point (x, y, z) in the other frame. */
    void point(double x, double y, double z, double[] out) {
        direction(x, y, z, out);
        out[0] += origin[0];
        out[1] += origin[1];
        out[2] += origin[2];
    }

    /** The direction (x, y, z) in the other frame. */
    void direction(double x, double y, double z, double[] out) {
        out[0] = m[0] * x + m[1] * y + m[2] * z;
        out[1] = m[3] * x + m[4] * y + m[5] * z;
        out[2] = m[6] * x + m[7] * y + m[8] * z;
    }
}
