package simmerpoint.geometry;

import java.util.Arrays;
import org.ejml.data.DMatrix3;
import org.ejml.data.DMatrix3x3;
import org.ejml.dense.fixed.CommonOps_DDF3;

/** A rotation in space: an orthogonal matrix of determinant +1. Immutable. */
public final class Rotation {
    /** No rotation. */
    public static final Rotation IDENTITY = ofAxes(Direction.X, Direction.Y, Direction.Z);

    private final DMatrix3x3 m;

    private Rotation(DMatrix3x3 m) {
        this.m = m;
    }

    /** The rotation that takes the axes x, y, z to the given three, which must be right-handed and orthogonal. */
    public static Rotation ofAxes(Direction x, Direction y, Direction z) {
        if (!(x.vec().cross(y.vec()).minus(z.vec()).length() < 1e-9)) {
            throw new IllegalArgumentException("axes " + x + ", " + y + ", " + z + " are not right-handed and square");
        }
        Vec a = x.vec();
        Vec b = y.vec();
        Vec c = z.vec();
        return new Rotation(new DMatrix3x3(a.x(), b.x(), c.x(), a.y(), b.y(), c.y(), a.z(), b.z(), c.z()));
    }

    /** The smallest rotation that takes +z to {@code to}; it does not twist. {@code to} is not −z. */
    public static Rotation fromZTo(Direction to) {
        Vec n = to.vec();
        double k = 1 / (1 + n.z());
        Direction x = Direction.of(new Vec(1 - n.x() * n.x() * k, -n.x() * n.y() * k, -n.x()));
        Direction y = Direction.of(n.cross(x.vec()));
        return ofAxes(Direction.of(y.vec().cross(n)), y, to);
    }

    /** The rotation by {@code angle} (rad, right-handed) about +z. */
    public static Rotation aboutZ(double angle) {
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        return ofAxes(new Direction(new Vec(c, s, 0)), new Direction(new Vec(-s, c, 0)), Direction.Z);
    }

    /** The rotated vector. */
    public Vec apply(Vec v) {
        DMatrix3 out = new DMatrix3();
        CommonOps_DDF3.mult(m, new DMatrix3(v.x(), v.y(), v.z()), out);
        return new Vec(out.a1, out.a2, out.a3);
    }

    /** The rotated direction. */
    public Direction apply(Direction d) {
        return Direction.of(apply(d.vec()));
    }

    /** First {@code first}, then this. */
    public Rotation after(Rotation first) {
        DMatrix3x3 out = new DMatrix3x3();
        CommonOps_DDF3.mult(m, first.m, out);
        return new Rotation(out);
    }

    /** The inverse rotation. */
    public Rotation inverse() {
        DMatrix3x3 out = new DMatrix3x3();
        CommonOps_DDF3.transpose(m, out);
        return new Rotation(out);
    }

    /** The nine entries row by row, as a new array: for loops that rotate many vectors. */
    public double[] rows() {
        return new double[] {m.a11, m.a12, m.a13, m.a21, m.a22, m.a23, m.a31, m.a32, m.a33};
    }

    /** Frobenius norm of the difference: an upper bound of how far the two rotated images of a unit vector are apart. */
    public double distanceTo(Rotation other) {
        double[] a = rows();
        double[] b = other.rows();
        double squares = 0;
        for (int k = 0; k < a.length; k++) {
            squares += (a[k] - b[k]) * (a[k] - b[k]);
        }
        return Math.sqrt(squares);
    }

    /** Whether all nine entries are the same to the last bit. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Rotation rotation && Arrays.equals(rows(), rotation.rows());
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(rows());
    }
}
