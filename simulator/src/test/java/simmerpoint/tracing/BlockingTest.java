package simmerpoint.tracing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.built.BuildErrors;
import simmerpoint.dish.cut.BentStrips;
import simmerpoint.dish.cut.FromFile;
import simmerpoint.dish.mesh.Mesh;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.geometry.Pose;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Plane;
import simmerpoint.sampling.ScrambledSobol;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Setup;
import simmerpoint.setup.Stand;
import simmerpoint.sun.Sunlight;
import simmerpoint.sun.UniformDiscSun;

/** A square panel on the ground, a smaller one floating over it; every ray is judged here by plain geometry as well. */
class BlockingTest {
    private static final double FLOAT = 0.3;

    private static final Mesh TWO = new Mesh(
            "two panels",
            new double[] {
                -0.5, -0.5, 0, 0.5, -0.5, 0, 0.5, 0.5, 0, -0.5, 0.5, 0, -0.1, -0.2, FLOAT, 0.2, -0.2, FLOAT, 0.2, 0.2,
                FLOAT, -0.1, 0.2, FLOAT
            },
            new int[] {0, 1, 2, 3, 4, 5, 6, 7},
            new int[] {0, 4, 8});

    private static Setup setup(double driftUp, double driftSide) {
        Aim aim = new Aim(0, 0, driftUp, driftSide, 0, 0, Aim.PanCarrier.STAND);
        Sunlight sun = new Sunlight(0.9, 1000, UniformDiscSun.MEAN_SUN);
        return Setup.of(new DishPlan(1.5, 1, 0, 0, new FromFile(TWO)), sun, aim, new Plane(0.2, 0.4), Stand.AT_FOCUS);
    }

    private static LightCaster caster(Setup setup) {
        DishPlan plan = new DishPlan(1.5, 1, 0, 0, new FromFile(TWO));
        Sunlight sun = new Sunlight(0.9, 1000, UniformDiscSun.MEAN_SUN);
        return new LightCaster(BuildErrors.NONE.build(plan, Mirror.plain(1, 0.01)), 1, sun, setup, Aim.PERFECT);
    }

    /** Whether the ray from a ground point meets the floating panel; all in the dish frame. */
    private static boolean underThePanel(Vec point, Vec direction) {
        double t = (FLOAT - point.z()) / direction.z();
        Vec q = point.plus(direction.times(t));
        return t > 0 && q.x() > -0.1 && q.x() < 0.2 && Math.abs(q.y()) < 0.2;
    }

    /** The sun at several places: exactly the ground under the panel's shadow is dark, and never the panel itself. */
    @ParameterizedTest
    @CsvSource({"0, 0", "0.5, 0", "-0.3, 0.4"})
    void theFloatingPanelHidesTheSun(double driftUp, double driftSide) {
        Setup setup = setup(driftUp, driftSide);
        LightCaster caster = caster(setup);
        assertTrue(caster.blocking().possible());
        ScrambledSobol sobol = new ScrambledSobol(caster.dimensions(), 1, 0);
        LightCaster.BatchCaster beam = caster.new BatchCaster(sobol, sobol.block(14, 0));
        Pose toDish = setup.dishInTarget().inverse();
        int dark = 0;
        double floating = 0;
        for (long k = 0; k < beam.batches(); k++) {
            LightBatch light = beam.cast(k);
            for (int i = 0; i < light.capacity; i++) {
                if (light.panel[i] == 0) {
                    Vec point = toDish.toParent(new Vec(light.px[i], light.py[i], light.pz[i]));
                    Vec sun = toDish.rotation().apply(new Vec(light.sx[i], light.sy[i], light.sz[i]));
                    boolean hidden = underThePanel(point, sun);
                    assertEquals(hidden, light.watts[i] == 0, () -> "at " + point);
                    dark += hidden ? 1 : 0;
                } else if (light.panel[i] == 1) {
                    floating += light.watts[i] * light.beam / (1 << 14);
                }
            }
        }
        assertTrue(dark > 500, "only " + dark + " rays tested the shadow");
        double cosine = setup.sunInDish().vec().z();
        assertEquals(1000 * 0.12 * cosine, floating, 1, "the panel's own light, W");
    }

    /** Rays off the ground towards the target: stopped if the panel is in the way and nearer than their end. */
    @Test
    void theFloatingPanelStopsReflectedLight() {
        Setup setup = setup(0.5, 0.2);
        LightCaster caster = caster(setup);
        ScrambledSobol sobol = new ScrambledSobol(caster.dimensions(), 2, 0);
        LightCaster.BatchCaster beam = caster.new BatchCaster(sobol, sobol.block(13, 0));
        Pose toDish = setup.dishInTarget().inverse();
        Blocking.Test test = caster.blocking().test();
        ReflectedDirections out = new ReflectedDirections(beam.batchSize());
        int stopped = 0;
        for (long k = 0; k < beam.batches(); k++) {
            LightBatch light = beam.cast(k);
            out.reflect(light, light.capacity);
            for (int i = 0; i < light.capacity; i++) {
                Vec d = new Vec(out.dx[i], out.dy[i], out.dz[i]);
                Vec point = toDish.toParent(new Vec(light.px[i], light.py[i], light.pz[i]));
                Vec inDish = toDish.rotation().apply(d);
                if (light.panel[i] == 0) {
                    boolean wanted = underThePanel(point, inDish);
                    double there = (FLOAT - point.z()) / inDish.z();
                    assertEquals(wanted, test.blocks(light, i, d.x(), d.y(), d.z(), 1.001 * there));
                    assertFalse(test.blocks(light, i, d.x(), d.y(), d.z(), 0.999 * there), "ends before the panel");
                    stopped += wanted ? 1 : 0;
                } else if (light.panel[i] == 1) {
                    assertFalse(test.blocks(light, i, d.x(), d.y(), d.z(), 10), "nothing above the panel");
                }
            }
        }
        assertTrue(stopped > 300, "only " + stopped + " rays tested the way out");
    }

    @Test
    void aBowlHidesNothing() {
        Setup setup = setup(0, 0);
        DishPlan plan = new DishPlan(1.2, 1, 0, 0, new BentStrips(12));
        Blocking blocking = Blocking.of(plan.surface(setup.sunInDish()), setup.dishInTarget());
        assertFalse(blocking.possible());
        assertFalse(blocking.test().blocks(new LightBatch(1), 0, 0, 0, 1, 10));
    }
}
