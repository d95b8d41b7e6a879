package simmerpoint.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.mesh.Mesh;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.pan.Target;
import simmerpoint.sampling.Estimate;
import simmerpoint.setup.Aim;
import simmerpoint.target.SpotEllipse;

/** A dish that shakes: the average over real turns, each traced by itself. */
class JitterTest {
    private static final double JITTER = 0.02;
    private static final double MOUNT = 0.3;
    private static final double REACH = 4;
    private static final double STEP = 1;

    private static Aim shaking(double jitter, Aim.PanCarrier carrier) {
        return new Aim(0.01, -0.005, 0, 0, jitter, MOUNT, carrier);
    }

    private static Scene scene(DishPlan dish, Target target) {
        return Scene.of(dish, target).with(Mirror.plain(0.85, 5e-3)).elevation(Math.toRadians(50));
    }

    /**
     * The watts of a Gaussian turn by the trapezium rule with steps of a standard deviation out to four of them (rule's
     * own error below 1e-4). All turns are traced with one seed, so their errors may add up: the sum is their bound.
     */
    private static Estimate averageOfTurns(Scene still, long rays) {
        int most = (int) Math.round(REACH / STEP);
        double sum = 0;
        double error = 0;
        double weights = 0;
        for (int i = -most; i <= most; i++) {
            for (int j = -most; j <= most; j++) {
                double w = Math.exp(-(i * i + j * j) * STEP * STEP / 2);
                Scene turned = still.with(still.aim().plusTurn(i * STEP * JITTER, j * STEP * JITTER));
                Estimate caught = turned.trace(rays, 5).ledger().caught();
                sum += w * caught.value();
                error += w * caught.standardError();
                weights += w;
            }
        }
        return new Estimate(sum / weights, error / weights);
    }

    /** 4 standard errors of both together: by chance once in 900 times at most. */
    private static void check(DishPlan dish, Target target, Aim.PanCarrier carrier, long rays, double leastCost) {
        Scene still = scene(dish, target).with(shaking(0, carrier));
        Estimate expected = averageOfTurns(still, rays);
        Estimate shaken =
                still.with(shaking(JITTER, carrier)).trace(1L << 18, 6).ledger().caught();
        double error = Math.hypot(expected.standardError(), shaken.standardError());
        assertEquals(expected.value(), shaken.value(), 4 * error, carrier.toString());
        double calm = still.trace(1L << 16, 6).ledger().caught().value();
        assertTrue(calm - shaken.value() > leastCost * error, "jitter costs " + (calm - shaken.value()) + " W");
    }

    @ParameterizedTest
    @EnumSource(Aim.PanCarrier.class)
    void isTheAverageOverTurns(Aim.PanCarrier carrier) {
        check(Scene.rings(1.2, 0.8, 0.06, 12, 4), Scene.pan(0.08, 0.11), carrier, 1L << 14, 10);
    }

    /** A square panel floats above another one: whether it hides the sun and the light depends on the turn. */
    @ParameterizedTest
    @EnumSource(Aim.PanCarrier.class)
    void isTheAverageOverTurnsWherePanelsHideEachOther(Aim.PanCarrier carrier) {
        Mesh two = new Mesh(
                "two panels",
                new double[] {
                    -0.5, -0.5, 0, 0.5, -0.5, 0, 0.5, 0.5, 0, -0.5, 0.5, 0, -0.1, -0.2, 0.3, 0.2, -0.2, 0.3, 0.2, 0.2,
                    0.3, -0.1, 0.2, 0.3
                },
                new int[] {0, 1, 2, 3, 4, 5, 6, 7},
                new int[] {0, 4, 8});
        check(Scene.mesh(1.5, 1, two), Scene.disc(0.3), carrier, 1L << 12, 0.5);
    }

    /** A perfect small mirror under a point sun: the spot's standard deviation is (2f + b)σ, or fσ on a carried disc. */
    @ParameterizedTest
    @CsvSource({"STAND, 2.5e-3", "DISH, 2.5e-3"})
    void spotMovesByTheTurn(Aim.PanCarrier carrier, double sigma) {
        double focal = 0.8;
        SpotEllipse spot = Scene.of(Scene.smooth(0.05, focal, 0), Scene.disc(0.1))
                .with(Scene.POINT)
                .with(new Aim(0, 0, 0, 0, sigma, MOUNT, carrier))
                .trace(1L << 18, 7)
                .spot()
                .ellipse()
                .orElseThrow();
        double arm = carrier == Aim.PanCarrier.DISH ? focal : 2 * focal + MOUNT;
        assertEquals(arm * sigma, spot.longSigma(), 0.01 * arm * sigma);
        assertEquals(arm * sigma, spot.shortSigma(), 0.01 * arm * sigma);
    }
}
