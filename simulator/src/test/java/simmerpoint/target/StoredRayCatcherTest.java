package simmerpoint.target;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.FloatRange;
import org.junit.jupiter.api.Test;
import simmerpoint.dish.built.MirrorShares;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Pose;
import simmerpoint.geometry.Rotation;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Finish;
import simmerpoint.pan.GrazingAbsorptance;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Plane;
import simmerpoint.pan.Target;
import simmerpoint.tracing.LightBatch;
import simmerpoint.tracing.ReflectedDirections;
import simmerpoint.tracing.ReflectedRays;

/** The quick catch against the plain one, ray by ray and in double precision: they may differ by rounding only. */
class StoredRayCatcherTest {
    private static final double SHARE = 0.83;
    private static final double SUN_ANGLE = 5e-3;
    private static final Vec SUN = Direction.of(new Vec(-0.4, 0.1, 1)).vec();
    private static final Pan PAN = new Pan(0.24, 0.11, new Finish("own figures", 0.9));
    private static final Grid PLANE = TargetGrids.of(PAN, 0.01).plane();

    /** Mirror points under, beside and above the pan, directions everywhere, some exactly level, suns about {@link #SUN}. */
    private static ReflectedRays rays(Random random, int n) {
        LightBatch light = new LightBatch(n);
        ReflectedDirections out = new ReflectedDirections(n);
        for (int i = 0; i < n; i++) {
            light.panel[i] = i % 7 == 0 ? -1 : i % 5;
            light.watts[i] = (float) random.nextDouble();
            Vec p = new Vec(
                    random.nextGaussian() * 0.3, random.nextGaussian() * 0.3, random.nextGaussian() * 0.3 - 0.4);
            light.px[i] = (float) p.x();
            light.py[i] = (float) p.y();
            light.pz[i] = (float) p.z();
            Vec sun = Direction.of(SUN.plus(new Vec(random.nextGaussian() * 1e-3, random.nextGaussian() * 1e-3, 0)))
                    .vec();
            light.sx[i] = (float) sun.x();
            light.sy[i] = (float) sun.y();
            light.sz[i] = (float) sun.z();
            double x = random.nextGaussian() * 0.2 - p.x();
            double y = random.nextGaussian() * 0.2 - p.y();
            double z = i % 11 == 0 ? 0 : random.nextGaussian() * 0.3 - p.z();
            Vec d = Direction.of(new Vec(x, y, z)).vec();
            out.dx[i] = (float) d.x();
            out.dy[i] = (float) d.y();
            out.dz[i] = (float) d.z();
        }
        return ReflectedRays.of(light, out);
    }

    /** What the rays do, told the long way. */
    private static Tally plainly(Target target, List<ReflectedRays> batches, Pose pose) {
        Tally tally = new Tally(TargetGrids.of(target, 0.01));
        boolean bare = !(target instanceof Pan);
        double radius = target.radiusMetres();
        Cylinder body = new Cylinder(radius, target instanceof Pan pan ? pan.heightMetres() : 0, bare);
        for (ReflectedRays rays : batches) {
            for (int i = 0; i < rays.count(); i++) {
                Vec p = pose.toParent(rays.point(i));
                Vec s = pose.rotation().apply(rays.towardsSun(i));
                Vec d = pose.rotation().apply(rays.direction(i));
                tally.incident += rays.watts(i);
                boolean shaded = !bare && body.intersect(p.x(), p.y(), p.z(), s.x(), s.y(), s.z()) != Cylinder.NOTHING;
                double lit = shaded ? 0 : rays.watts(i);
                tally.shaded += rays.watts(i) - lit;
                tally.unshaded += lit;
                int met = body.intersect(p.x(), p.y(), p.z(), d.x(), d.y(), d.z());
                if (body.crossesBase) {
                    double t = -p.z() / d.z();
                    double x = p.x() + t * d.x();
                    double y = p.y() + t * d.y();
                    tally.addCrossing(x, y, Math.hypot(x, y), met == Cylinder.UNDERSIDE, lit * SHARE);
                    if (met == Cylinder.UNDERSIDE) {
                        tally.undersideAbsorbable += lit * SHARE * GrazingAbsorptance.relativeAbsorptance(d.z());
                    }
                }
                tally.addBodyHit(body, met, d.x(), d.y(), d.z(), 1, lit * SHARE);
            }
        }
        return tally;
    }

    private static void check(Target target, Pose pose) {
        List<ReflectedRays> small = new Random(5)
                .ints(40, 1, 129)
                .mapToObj(n -> rays(new Random(n), n))
                .toList();
        List<ReflectedRays> batches = ReflectedRays.merged(small, StoredRayCatcher.MAX_BATCH);
        assertEquals(
                small.stream().mapToInt(ReflectedRays::count).sum(),
                batches.stream().mapToInt(ReflectedRays::count).sum());
        assertTrue(batches.size() < small.size() / 2);
        Tally expected = plainly(target, batches, pose);
        Tally tally = new Tally(TargetGrids.of(target, 0.01));
        StoredRayCatcher quick = new StoredRayCatcher(
                target,
                pose.rotation().apply(SUN),
                SUN_ANGLE,
                MirrorShares.of(Mirror.plain(SHARE, 0)),
                tally,
                Optional.empty());
        batches.forEach(b -> quick.add(b, pose));
        double rounding = 1e-5;
        assertEquals(expected.incident, tally.incident, rounding);
        assertEquals(expected.shaded, tally.shaded, rounding);
        assertEquals(expected.unshaded, tally.unshaded, rounding);
        assertEquals(expected.missed, tally.missed, rounding);
        assertEquals(expected.underside, tally.underside, rounding);
        assertEquals(expected.wall, tally.wall, rounding);
        assertEquals(expected.lid, tally.lid, rounding);
        assertEquals(expected.undersideAbsorbable, tally.undersideAbsorbable, rounding);
        assertArrayEquals(expected.wallAbsorbableByRow, tally.wallAbsorbableByRow, rounding);
        assertEquals(expected.lidAbsorbable, tally.lidAbsorbable, rounding);
        for (int k = 0; k < 5; k++) {
            assertEquals(expected.moments[k], tally.moments[k], rounding);
        }
        same(expected.planeMap, tally.planeMap, 2 * expected.grids.plane().cells());
        same(expected.wallMap, tally.wallMap, expected.wallMap.length);
        same(expected.lidMap, tally.lidMap, expected.lidMap.length);
        same(expected.crossing.bins, tally.crossing.bins, expected.crossing.bins.length);
        assertTrue(expected.underside > 10 && expected.missed > 10, "something of everything");
        if (target instanceof Pan) {
            assertTrue(expected.shaded > 10 && expected.wall > 10 && expected.lid > 0.5, "something of everything");
        }
    }

    /** A ray on a border may fall into the next cell by rounding: of thousands, two at most. */
    private static void same(double[] expected, double[] found, int length) {
        double moved = 0;
        for (int c = 0; c < length; c++) {
            moved += Math.abs(expected[c] - found[c]);
        }
        assertTrue(moved < 4, "moved: " + moved);
    }

    @Test
    void panThatOnlyMoved() {
        check(PAN, new Pose(Rotation.IDENTITY, new Vec(0.03, -0.02, 0.05)));
    }

    @Test
    void panThatTurned() {
        check(PAN, new Pose(Rotation.fromZTo(Direction.of(new Vec(0.1, 0.05, 1))), new Vec(0.03, -0.02, 0.05)));
    }

    @Test
    void bareDisc() {
        check(new Plane(0.2, 0), new Pose(Rotation.IDENTITY, new Vec(0, 0.01, 0)));
        check(new Plane(0.2, 0), new Pose(Rotation.aboutZ(0.7), new Vec(0, 0.01, 0)));
    }

    @Property(seed = "42")
    void theCellIsTheSameEitherWay(
            @ForAll @FloatRange(min = -0.4f, max = 0.4f) float x,
            @ForAll @FloatRange(min = -0.4f, max = 0.4f) float y) {
        int cell = PLANE.cellAt(x, y);
        int quick = cellOrOutside(x, y);
        boolean border = nearBorder(x) || nearBorder(y);
        assertTrue(border || quick == (cell < 0 ? 2 * PLANE.cells() : cell), x + ", " + y + ": " + cell + ", " + quick);
    }

    private static int cellOrOutside(float x, float y) {
        int[] cell = new int[1];
        PLANE.cellsOrOutside(new float[] {x}, new float[] {y}, 1, cell);
        return cell[0];
    }

    private static boolean nearBorder(double x) {
        double cells = (x - PLANE.firstMin()) * PLANE.inverseCellWidth();
        return Math.abs(cells - Math.rint(cells)) < 1e-4;
    }

    @Test
    void farAwayIsBeyond() {
        for (float far : new float[] {1e9f, -1e9f, 1e30f, -1e30f, Float.POSITIVE_INFINITY, Float.NaN}) {
            assertEquals(2 * PLANE.cells(), cellOrOutside(far, 0));
            assertEquals(2 * PLANE.cells(), cellOrOutside(0, far));
        }
    }
}
