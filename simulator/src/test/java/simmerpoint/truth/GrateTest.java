package simmerpoint.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.mesh.Mesh;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Support;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.light.StoredLight;
import simmerpoint.study.pan.MoveStudy;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.target.Ledger;

/** Light stopped by bars, ring and arm under the pan. */
class GrateTest {
    private static final double RADIUS = 0.1;
    private static final double WIDTH = 0.012;
    private static final double LENGTH = 0.3;
    private static final double SLANT = 0.35;
    private static final DishPlan FLAT = Scene.mesh(
            2,
            1,
            new Mesh(
                    "one flat panel",
                    new double[] {-0.7, -0.7, 0, 0.7, -0.7, 0, 0.7, 0.7, 0, -0.7, 0.7, 0},
                    new int[] {0, 1, 2, 3},
                    new int[] {0, 4}));

    /** A flat mirror under a slanting point sun: an even parallel beam on the whole underside, the pan's shadow beside it. */
    private static Ledger evenly(Support support) {
        Pan pan = Scene.pan(RADIUS, 1e-4).withSupport(support);
        return Scene.of(FLAT, pan)
                .with(Scene.POINT)
                .drift(SLANT, 0)
                .trace(1L << 18, 3)
                .ledger();
    }

    /** Area of a disc covered by the bars of a grate, summed over a fine square grid. */
    private static double covered(Support support) {
        int n = 2000;
        Support.Cover cover = support.cover();
        double cell = 2 * RADIUS / n;
        int cells = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double x = (i + 0.5) * cell - RADIUS;
                double y = (j + 0.5) * cell - RADIUS;
                cells += x * x + y * y <= RADIUS * RADIUS && cover.covers(x, y) ? 1 : 0;
            }
        }
        return cells * cell * cell;
    }

    private static void near(double expected, Estimate found, double rounding) {
        assertEquals(expected, found.value(), 4 * found.standardError() + rounding);
    }

    /**
     * The beam on a level square metre is 1000 · cos(slant) both ways. Bars stop it over their whole length on the way up; on the
     * way down they add their parts beyond the pan to its shadow (derived here). 4 standard errors.
     */
    @ParameterizedTest
    @CsvSource({"0", "0.6", "1.5708"})
    void parallelBarsStopTheirShareOfAnEvenBeam(double azimuth) {
        Support grate = Support.grate(3, WIDTH, LENGTH, 0.06, azimuth);
        double level = 1000 * Math.cos(SLANT);
        double bars = 3 * WIDTH * LENGTH;
        double disc = Math.PI * RADIUS * RADIUS;
        double within = grate.shareOfDisc(RADIUS) * disc;
        assertEquals(covered(grate), within, 2e-3 * within);
        Ledger none = evenly(Support.NONE);
        Ledger with = evenly(grate);
        near(level * disc, none.underside(), 1e-3);
        near(level * (disc - within), with.underside(), 1e-3);
        near(level * bars, with.stopped(), 1e-3);
        near(level * (disc + bars - within), with.shaded(), 0.02);
        assertEquals(0, none.stopped().value());
        assertEquals(
                with.reflected().value(),
                with.missed().value() + with.caught().value(),
                1e-9 * with.reflected().value());
    }

    /** A ring of diameter d covers π·d·w; an arm w·L, all of it on the way up and what lies beyond the pan on the way down. */
    @Test
    void ringAndArmStopTheirAreas() {
        double level = 1000 * Math.cos(SLANT);
        Ledger ring = evenly(Support.NONE.withRing(0.12, WIDTH));
        near(level * Math.PI * 0.12 * WIDTH, ring.stopped(), 1e-3);
        near(level * (Math.PI * RADIUS * RADIUS - Math.PI * 0.12 * WIDTH), ring.underside(), 1e-3);
        Ledger arm = evenly(Support.NONE.withArm(WIDTH, 0.25, -1));
        near(level * WIDTH * 0.25, arm.stopped(), 1e-3);
        double beyond = WIDTH * 0.25 - covered(Support.NONE.withArm(WIDTH, 0.25, -1));
        near(level * (Math.PI * RADIUS * RADIUS + beyond), arm.shaded(), 0.02);
    }

    private static Scene cooker(Support support) {
        return Scene.of(
                        Scene.rings(1.2, 0.8, 0.06, 12, 4),
                        Scene.pan(0.12, 0.11).withSupport(support))
                .with(Mirror.plain(0.85, 5e-3))
                .elevation(Math.toRadians(50));
    }

    /** A trace, stored light and a sweep of positions see the same bars: within 5 standard errors of both. */
    @Test
    void everyWayToCatchLightSeesTheBars() {
        Scene scene = cooker(Support.grate(4, WIDTH, 0.4, 0.05, 0.3).withArm(0.03, 0.5, 0.2));
        TraceOptions options = TraceOptions.defaults().withRays(1L << 17).withThreads(2);
        Ledger traced = scene.trace(options).ledger();
        Ledger stored = StoredLight.cast(scene.scenario(), options.withSeed(9), Progress.NONE)
                .catchFor(scene.scenario(), Progress.NONE)
                .ledger();
        MoveStudy.Curve swept = MoveStudy.run(
                scene.scenario(), MoveStudy.Move.PULL_BACK, -0.05, 0.05, 11, options.withSeed(11), Progress.NONE);
        same(traced.underside(), stored.underside());
        same(traced.wall(), stored.wall());
        same(traced.stopped(), stored.stopped());
        same(traced.shaded(), stored.shaded());
        same(traced.underside(), swept.underside().get(5));
        same(traced.wall(), swept.wall().get(5));
        same(traced.shaded(), swept.shaded().get(5));
        double cost = 1
                - traced.caught().value()
                        / cooker(Support.NONE).trace(options).ledger().caught().value();
        assertTrue(cost > 0.05 && cost < 0.4, "share stopped " + cost);
    }

    private static void same(Estimate a, Estimate b) {
        assertEquals(a.value(), b.value(), 5 * Math.hypot(a.standardError(), b.standardError()));
    }
}
