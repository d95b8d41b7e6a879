package simmerpoint.safety.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import simmerpoint.geometry.Vec;

/** What a surface gets by its bounds from fluence and net flux, against the sum over all directions, done here. */
class FacingLightTest {
    private record Ray(double weight, Vec along) {}

    private static Vec way(Random random) {
        Vec v = new Vec(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
        return v.times(1 / v.length());
    }

    private static LightField.Light light(List<Ray> rays) {
        double fluence = rays.stream().mapToDouble(Ray::weight).sum();
        Vec net = rays.stream().map(ray -> ray.along().times(ray.weight())).reduce(Vec.ZERO, Vec::plus);
        return new LightField.Light(fluence, net, 0);
    }

    private static double truth(List<Ray> rays, Vec facing) {
        return rays.stream()
                .mapToDouble(ray -> ray.weight() * Math.max(0, -ray.along().dot(facing)))
                .sum();
    }

    @Test
    void noSurfaceGetsLessOrMoreThanItsBounds() {
        Random random = new Random(11);
        for (int k = 0; k < 2000; k++) {
            Vec middle = way(random);
            double wide = 2 * random.nextDouble();
            List<Ray> rays = new ArrayList<>();
            for (int n = 1 + random.nextInt(6); n > 0; n--) {
                Vec along = middle.plus(way(random).times(wide));
                rays.add(new Ray(random.nextDouble(), along.times(1 / along.length())));
            }
            Vec facing = way(random);
            double got = truth(rays, facing);
            LightField.Light light = light(rays);
            assertTrue(light.least(facing) <= got + 1e-12, rays + " on " + facing);
            assertTrue(light.most(facing) >= got - 1e-12, rays + " on " + facing);
            assertTrue(light.most(facing) <= light.most() + 1e-12, "the worst way is the worst");
        }
    }

    @Test
    void forOneDirectionTheBoundIsWhatItGets() {
        Random random = new Random(12);
        for (int k = 0; k < 200; k++) {
            List<Ray> rays = List.of(new Ray(3, way(random)));
            Vec facing = way(random);
            assertEquals(truth(rays, facing), light(rays).most(facing), 1e-9);
            assertEquals(truth(rays, facing), light(rays).least(facing), 1e-9);
        }
    }

    @Test
    void theWorstWayIsAgainstTheLight() {
        List<Ray> rays = List.of(new Ray(1, new Vec(0, 0, 1)), new Ray(1, new Vec(0, 0.6, 0.8)));
        LightField.Light light = light(rays);
        Vec against = light.net().times(-1 / light.net().length());
        assertEquals(light.most(), light.most(against), 1e-12);
    }
}
