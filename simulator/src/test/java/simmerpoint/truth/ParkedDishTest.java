package simmerpoint.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.geometry.Vec;
import simmerpoint.safety.field.FieldBox;
import simmerpoint.safety.field.FieldStudy;
import simmerpoint.safety.field.LightField;
import simmerpoint.safety.field.Yard;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/**
 * The light of a dish with the sun far off its axis against a plain tracer of a paraboloid, written from the geometry alone:
 * shading by the far side of the bowl, reflections in it, path lengths within one cubic cell found by short steps.
 */
class ParkedDishTest {
    private static final double F = 0.8;
    private static final double RADIUS = 0.6;
    private static final double RHO = 0.85;
    private static final double ERRORS = 5;

    /** Sun's angle from the axis towards the dish's upper edge, then a place of its light in the dish frame. */
    @ParameterizedTest
    @CsvSource({"30, -0.44, 0.89, 0.1", "60, -1.03, 1.08, 0.2", "75, -0.4, 0.2, 0.16", "45, -0.4, 0.4, 0.3"})
    void lightIsThatOfAPlainTracer(double degrees, double x, double z, double cell) {
        double angle = Math.toRadians(degrees);
        Scene scene = Scene.of(Scene.smooth(2 * RADIUS, F, 0), Scene.disc(0.01))
                .with(Mirror.plain(RHO, 0))
                .drift(angle, 0);
        Yard yard = Yard.of(scene.scenario());
        Vec middle = yard.place(new Vec(x, 0, z));
        FieldBox box = new FieldBox(middle.minus(new Vec(cell, cell, cell).times(0.5)), cell, 1, 1, 1);
        LightField.Light light = FieldStudy.run(
                        scene.scenario(),
                        TraceOptions.defaults().withRays(1 << 18).withThreads(2),
                        List.of(box),
                        List.of(false),
                        Progress.NONE)
                .get(0)
                .fields()
                .get(0)
                .cell(0, 0, 0);
        double[] plain = plain(angle, new Vec(x, 0, z), cell, 300_000);
        assertTrue(plain[0] > 20 * plain[1], "enough light there to compare: " + plain[0]);
        assertEquals(
                plain[0], light.fluence(), ERRORS * Math.hypot(plain[1], light.standardError()) + 0.003 * plain[0]);
    }

    /** Fluence in the cell and its standard error, W/m²; the sun stands overhead in the yard, so cells have the dish's axes. */
    private static double[] plain(double angle, Vec middle, double cell, int rays) {
        Random random = new Random(7);
        double sum = 0;
        double squares = 0;
        for (int k = 0; k < rays; k++) {
            double here = ray(random, angle, middle, cell);
            sum += here;
            squares += here * here;
        }
        double mean = sum / rays;
        return new double[] {mean, Math.sqrt((squares / rays - mean * mean) / rays)};
    }

    private static double ray(Random random, double angle, Vec middle, double cell) {
        double r = RADIUS * Math.sqrt(random.nextDouble());
        double phi = 2 * Math.PI * random.nextDouble();
        Vec p = new Vec(r * Math.cos(phi), r * Math.sin(phi), r * r / (4 * F));
        double t = Math.sin(Scene.SUN) * Math.sqrt(random.nextDouble());
        double a = 2 * Math.PI * random.nextDouble();
        Vec u = new Vec(Math.cos(angle), 0, -Math.sin(angle));
        Vec s = new Vec(Math.sin(angle), 0, Math.cos(angle))
                .times(Math.sqrt(1 - t * t))
                .plus(u.times(t * Math.cos(a)))
                .plus(new Vec(0, t * Math.sin(a), 0));
        Vec n = normal(p);
        // Area of mirror per area in plan is 1/n_z.
        double watts = 1000 * s.dot(n) / n.z() * Math.PI * RADIUS * RADIUS;
        if (!(watts > 0) || across(p, s) < 1e3) {
            return 0;
        }
        Vec d = s.times(-1);
        double found = 0;
        for (int bounce = 0; bounce < 5; bounce++) {
            d = d.minus(normal(p).times(2 * d.dot(normal(p))));
            watts *= RHO;
            double end = Math.min(3, across(p, d));
            found += watts * within(p, d, end, middle, cell);
            if (end == 3) {
                break;
            }
            p = p.plus(d.times(end));
        }
        return found / (cell * cell * cell);
    }

    private static Vec normal(Vec p) {
        Vec n = new Vec(-p.x() / (2 * F), -p.y() / (2 * F), 1);
        return n.times(1 / n.length());
    }

    /** Path to the bowl from a point of it: the root that is not 0; 1e9 where that is behind or beyond the rim. */
    private static double across(Vec p, Vec d) {
        double t = (d.z() - (p.x() * d.x() + p.y() * d.y()) / (2 * F))
                / ((d.x() * d.x() + d.y() * d.y()) / (4 * F) + 1e-300);
        return t > 1e-3 && Math.hypot(p.x() + t * d.x(), p.y() + t * d.y()) <= RADIUS ? t : 1e9;
    }

    /** Length of the ray within the cell: between the nearest and the farthest plane of each pair. */
    private static double within(Vec p, Vec d, double end, Vec middle, double cell) {
        double[] q = {p.x() - middle.x(), p.y() - middle.y(), p.z() - middle.z()};
        double[] e = {d.x(), d.y(), d.z()};
        double from = 0;
        double to = end;
        for (int k = 0; k < 3; k++) {
            double one = (-cell / 2 - q[k]) / e[k];
            double other = (cell / 2 - q[k]) / e[k];
            from = Math.max(from, Math.min(one, other));
            to = Math.min(to, Math.max(one, other));
        }
        return Math.max(0, to - from);
    }
}
