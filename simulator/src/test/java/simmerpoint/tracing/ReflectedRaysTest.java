package simmerpoint.tracing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import simmerpoint.frozen.FrozenNumbers;
import simmerpoint.frozen.NumberDigest;
import simmerpoint.frozen.OddScenes;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Pose;
import simmerpoint.geometry.Rotation;
import simmerpoint.geometry.Vec;
import simmerpoint.sampling.ScrambledSobol;
import simmerpoint.scenario.Scenario;

class ReflectedRaysTest {
    /** Single precision: 24 bits. */
    private static final double FLOAT = 1e-6;

    private static final int BITS = 11;

    private record Cast(LightCaster.BatchCaster batches, ErrorSampler errors) {
        static Cast of(Scenario s) {
            LightCaster caster = new LightCaster(s.built(), 3, s.sun(), s.setup(), s.aim());
            ScrambledSobol sobol = new ScrambledSobol(caster.dimensions(), 3, 1);
            LightCaster.BatchCaster batches = caster.new BatchCaster(sobol, sobol.block(BITS, 0));
            return new Cast(batches, new ErrorSampler(batches.batchSize()));
        }

        List<ReflectedRays> all() {
            List<ReflectedRays> all = new ArrayList<>();
            for (long k = 0; k < batches.batches(); k++) {
                LightBatch light = batches.cast(k);
                all.add(ReflectedRays.of(light, errors.sample(light)));
            }
            return all;
        }
    }

    static Stream<Map.Entry<String, Scenario>> scenes() {
        return OddScenes.all().entrySet().stream();
    }

    @ParameterizedTest
    @MethodSource("scenes")
    void directionsAreUnitVectorsAndWattsAddUp(Map.Entry<String, Scenario> scene) {
        for (ReflectedRays rays : Cast.of(scene.getValue()).all()) {
            double watts = 0;
            for (int i = 0; i < rays.count(); i++) {
                assertEquals(1, rays.direction(i).length(), FLOAT);
                assertEquals(1, rays.towardsSun(i).length(), FLOAT);
                watts += rays.watts(i);
            }
            assertEquals(watts, rays.incidentWatts(), FLOAT * watts);
            float[] copied = new float[rays.count()];
            rays.copyWatts(copied);
            for (int i = 0; i < copied.length; i++) {
                assertEquals(rays.watts(i), copied[i]);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("scenes")
    void areAsTheyWere(Map.Entry<String, Scenario> scene) {
        NumberDigest digest = new NumberDigest();
        int batch = 0;
        for (ReflectedRays rays : Cast.of(scene.getValue()).all()) {
            digest.add(batch + ".count", rays.count()).add(batch + ".watts", rays.incidentWatts());
            double[] numbers = new double[10 * rays.count()];
            for (int i = 0; i < rays.count(); i++) {
                put(numbers, 10 * i, rays.point(i), rays.direction(i), rays.towardsSun(i));
                numbers[10 * i + 9] = rays.panel(i);
            }
            digest.add(batch++ + ".rays", numbers);
        }
        FrozenNumbers.check("rays-" + scene.getKey(), digest);
    }

    private static void put(double[] out, int at, Vec... vectors) {
        for (int v = 0; v < vectors.length; v++) {
            out[at + 3 * v] = vectors[v].x();
            out[at + 3 * v + 1] = vectors[v].y();
            out[at + 3 * v + 2] = vectors[v].z();
        }
    }

    @Test
    void mergedBatchesHoldTheSameRaysInTheSameOrder() {
        List<ReflectedRays> small = Cast.of(OddScenes.all().get("rings-level")).all();
        int most = small.get(0).count() + small.get(1).count() + 1;
        List<ReflectedRays> large = ReflectedRays.merged(small, most);
        assertEquals(small.get(0).count() + small.get(1).count(), large.get(0).count());
        assertEquals(
                small.get(0).incidentWatts() + small.get(1).incidentWatts(),
                large.get(0).incidentWatts(),
                1e-12);
        assertEquals(flat(small), flat(large));
        // A batch that is larger than the most stays whole.
        assertEquals(small.size(), ReflectedRays.merged(small, 1).size());
    }

    private static List<String> flat(List<ReflectedRays> batches) {
        List<String> rays = new ArrayList<>();
        for (ReflectedRays batch : batches) {
            for (int i = 0; i < batch.count(); i++) {
                rays.add(batch.point(i) + " " + batch.direction(i) + " " + batch.towardsSun(i) + " " + batch.watts(i)
                        + " " + batch.panel(i));
            }
        }
        return rays;
    }

    @Test
    void anotherFrameSeesThemTurnedAndShifted() {
        ReflectedRays rays = Cast.of(OddScenes.all().get("rings-level")).all().get(0);
        Pose pose = new Pose(turned(new Vec(1, 2, -3), 0.7), new Vec(0.2, -0.3, 0.5));
        ReflectedRays.TransformedRays there = new ReflectedRays.TransformedRays(rays.count());
        there.transform(rays, pose);
        for (int i = 0; i < rays.count(); i++) {
            assertSame(pose.toParent(rays.point(i)), there.px[i], there.py[i], there.pz[i]);
            assertSame(pose.rotation().apply(rays.direction(i)), there.dx[i], there.dy[i], there.dz[i]);
            there.loadSunDirection(rays, i);
            assertSame(pose.rotation().apply(rays.towardsSun(i)), there.sunX, there.sunY, there.sunZ);
        }
    }

    @Test
    void aFrameThatIsOnlyShiftedKeepsDirections() {
        ReflectedRays rays = Cast.of(OddScenes.all().get("strips-grate")).all().get(1);
        Vec by = new Vec(0.1, 0.25, -0.4);
        ReflectedRays.TransformedRays there = new ReflectedRays.TransformedRays(rays.count());
        there.transform(rays, new Pose(Rotation.IDENTITY, by));
        for (int i = 0; i < rays.count(); i++) {
            assertSame(rays.point(i).plus(by), there.px[i], there.py[i], there.pz[i]);
            assertSame(rays.direction(i), there.dx[i], there.dy[i], there.dz[i]);
        }
    }

    @Test
    void aBatchInAnotherFrameHasItsVectorsTurned() {
        LightBatch light =
                Cast.of(OddScenes.all().get("hexagons-disc")).batches().cast(1);
        Pose pose = new Pose(turned(new Vec(-2, 1, 1), -0.4), new Vec(0.05, 0.3, -0.2));
        LightBatch there = light.new FrameTransform().apply(pose);
        for (int i = 0; i < light.capacity; i++) {
            assertSame(
                    pose.toParent(new Vec(light.px[i], light.py[i], light.pz[i])),
                    there.px[i],
                    there.py[i],
                    there.pz[i]);
            Vec sun = new Vec(light.sx[i], light.sy[i], light.sz[i]);
            assertSame(pose.rotation().apply(sun), there.sx[i], there.sy[i], there.sz[i]);
            Vec normal = new Vec(light.nx[i], light.ny[i], light.nz[i]);
            assertSame(pose.rotation().apply(normal), there.nx[i], there.ny[i], there.nz[i]);
            for (int line = 0; line < 2; line++) {
                LightBatch.Tilts here = light.tilts[line];
                LightBatch.Tilts turned = there.tilts[line];
                Vec tilt = new Vec(here.x()[i], here.y()[i], here.z()[i]);
                assertSame(pose.rotation().apply(tilt), turned.x()[i], turned.y()[i], turned.z()[i]);
            }
        }
        assertArrayEquals(light.watts, there.watts);
        assertArrayEquals(light.panel, there.panel);
    }

    private static Rotation turned(Vec z, double about) {
        return Rotation.fromZTo(Direction.of(z)).after(Rotation.aboutZ(about));
    }

    private static void assertSame(Vec wanted, double x, double y, double z) {
        assertEquals(wanted.x(), x, FLOAT);
        assertEquals(wanted.y(), y, FLOAT);
        assertEquals(wanted.z(), z, FLOAT);
    }
}
