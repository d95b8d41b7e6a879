package simmerpoint.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SplittableRandom;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** Rotations and poses against those of Commons Math, over random directions from literal seeds. */
class RotationTest {
    private static final double ROUNDING = 1e-13;

    private static Vec any(SplittableRandom random) {
        return new Vec(random.nextDouble(-1, 1), random.nextDouble(-1, 1), random.nextDouble(-1, 1));
    }

    private static Vector3D theirs(Vec v) {
        return new Vector3D(v.x(), v.y(), v.z());
    }

    private static void same(Vector3D wanted, Vec got) {
        same(new Vec(wanted.getX(), wanted.getY(), wanted.getZ()), got);
    }

    private static void same(Vec wanted, Vec got) {
        assertEquals(0, wanted.minus(got).length(), ROUNDING, () -> "wanted " + wanted + ", got " + got);
    }

    /** The rotation of Commons Math that takes one vector to another is the smallest one, too. */
    @Test
    void fromZToIsTheSmallestRotation() {
        SplittableRandom random = new SplittableRandom(50_001);
        for (int i = 0; i < 500; i++) {
            Direction to = Direction.of(any(random).plus(new Vec(0, 0, 0.5)));
            org.apache.commons.math3.geometry.euclidean.threed.Rotation wanted =
                    new org.apache.commons.math3.geometry.euclidean.threed.Rotation(Vector3D.PLUS_K, theirs(to.vec()));
            Vec v = any(random);
            same(wanted.applyTo(theirs(v)), Rotation.fromZTo(to).apply(v));
        }
        same(new Vec(1, 2, 3), Rotation.fromZTo(Direction.Z).apply(new Vec(1, 2, 3)));
    }

    @Test
    void aboutZIsRightHanded() {
        SplittableRandom random = new SplittableRandom(50_002);
        for (int i = 0; i < 100; i++) {
            double angle = random.nextDouble(-7, 7);
            Vec v = any(random);
            org.apache.commons.math3.geometry.euclidean.threed.Rotation wanted =
                    new org.apache.commons.math3.geometry.euclidean.threed.Rotation(
                            Vector3D.PLUS_K, angle, RotationConvention.VECTOR_OPERATOR);
            same(wanted.applyTo(theirs(v)), Rotation.aboutZ(angle).apply(v));
        }
        same(Direction.Y.vec(), Rotation.aboutZ(Math.PI / 2).apply(Direction.X.vec()));
    }

    @Test
    void afterAppliesTheOtherFirst() {
        SplittableRandom random = new SplittableRandom(50_003);
        for (int i = 0; i < 100; i++) {
            Rotation a = Rotation.aboutZ(random.nextDouble(6));
            Rotation b = Rotation.fromZTo(Direction.of(any(random).plus(new Vec(0, 0, 1.1))));
            Vec v = any(random);
            same(a.apply(b.apply(v)), a.after(b).apply(v));
            same(v, b.inverse().apply(b.apply(v)));
            same(v, a.after(b).inverse().apply(a.after(b).apply(v)));
        }
    }

    @Test
    void rowsAreTheImagesOfTheAxes() {
        Rotation r = Rotation.fromZTo(Direction.of(new Vec(0.3, -0.5, 0.7)));
        double[] m = r.rows();
        same(r.apply(Direction.X.vec()), new Vec(m[0], m[3], m[6]));
        same(r.apply(Direction.Y.vec()), new Vec(m[1], m[4], m[7]));
        same(r.apply(Direction.Z.vec()), new Vec(m[2], m[5], m[8]));
        m[0] = 99;
        same(r.apply(Direction.X.vec()), new Vec(r.rows()[0], r.rows()[3], r.rows()[6]));
    }

    @Test
    void ofAxesRefusesMirrorsAndSkewAxes() {
        Direction d = Direction.of(new Vec(1, 1, 0));
        assertThrows(IllegalArgumentException.class, () -> Rotation.ofAxes(Direction.Y, Direction.X, Direction.Z));
        assertThrows(IllegalArgumentException.class, () -> Rotation.ofAxes(Direction.X, d, Direction.Z));
    }

    @Test
    void posesGoThereAndBack() {
        SplittableRandom random = new SplittableRandom(50_004);
        for (int i = 0; i < 100; i++) {
            Pose inner = new Pose(Rotation.fromZTo(Direction.of(any(random).plus(new Vec(0, 0, 1.1)))), any(random));
            Pose outer = new Pose(Rotation.aboutZ(random.nextDouble(6)), any(random));
            Vec p = any(random);
            same(p, inner.fromParent(inner.toParent(p)));
            same(inner.fromParent(p), inner.inverse().toParent(p));
            same(outer.toParent(inner.toParent(p)), inner.in(outer).toParent(p));
            same(inner.origin(), inner.toParent(Vec.ZERO));
        }
    }

    /** An angle on the sky: up and side are parts of the angle to +z, and opposite pairs are mirror images. */
    @Test
    void offZIsAsFarFromZAsItSays() {
        SplittableRandom random = new SplittableRandom(50_005);
        for (int i = 0; i < 200; i++) {
            double up = random.nextDouble(-1, 1);
            double side = random.nextDouble(-1, 1);
            Vec d = Direction.tiltedFromZ(up, side).vec();
            assertEquals(Math.hypot(up, side), Vector3D.angle(Vector3D.PLUS_K, theirs(d)), 1e-12);
            assertEquals(Math.atan2(side, up), Math.atan2(d.y(), d.x()), 1e-12);
            Vec back = Direction.tiltedFromZ(-up, -side).vec();
            same(new Vec(-d.x(), -d.y(), d.z()), back);
        }
        same(Direction.Z.vec(), Direction.tiltedFromZ(0, 0).vec());
        same(new Vec(1e-9, 0, 1), Direction.tiltedFromZ(1e-9, 0).vec());
    }

    @Test
    void rotationsAreEqualByWhatTheyDo() {
        Direction to = Direction.of(new Vec(0.1, -0.2, 1));
        assertEquals(Rotation.fromZTo(to), Rotation.fromZTo(to));
        assertEquals(Rotation.fromZTo(to).hashCode(), Rotation.fromZTo(to).hashCode());
        assertNotEquals(Rotation.fromZTo(to), Rotation.fromZTo(Direction.of(new Vec(0.1, -0.2, 1.0000001))));
    }

    /** About z by α every level vector's end moves by 2 sin(α/2), and the bound is √2 times that. */
    @Test
    void tellsHowFarTwoTurnsDiffer() {
        Rotation a = Rotation.fromZTo(Direction.of(new Vec(0.1, -0.2, 1)));
        assertEquals(0, a.distanceTo(a), 0);
        for (double angle : new double[] {1e-9, 1e-3, 1}) {
            double far = a.after(Rotation.aboutZ(angle)).distanceTo(a);
            assertEquals(Math.sqrt(2) * 2 * Math.sin(angle / 2), far, 1e-15 + 1e-7 * far);
        }
    }

    @Test
    void directionsHaveLengthOne() {
        assertThrows(IllegalArgumentException.class, () -> new Direction(new Vec(0, 0, 1.00001)));
        assertThrows(IllegalArgumentException.class, () -> new Direction(new Vec(Double.NaN, 0, 1)));
        assertThrows(IllegalArgumentException.class, () -> Direction.of(Vec.ZERO));
        assertThrows(IllegalArgumentException.class, () -> Direction.of(new Vec(0, Double.NaN, 1)));
        assertEquals(1, Direction.of(new Vec(3e-9, -4e-9, 1e-8)).vec().length(), 1e-15);
        assertEquals(0.6, Direction.of(new Vec(3, 0, 4)).dot(Direction.X), 1e-15);
    }
}
