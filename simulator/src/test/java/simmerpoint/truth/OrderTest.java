package simmerpoint.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.TraceResult;

/** What is better than what is known beforehand. Bounds: 4 standard errors of each difference. */
class OrderTest {
    private static final long RAYS = 1L << 17;

    private static Scene of(DishPlan dish, double radius) {
        return Scene.of(dish, Scene.disc(radius)).with(Mirror.plain(0.9, 3e-3));
    }

    @Test
    void largerSlopeErrorMakesALargerSpot() {
        Estimate last = null;
        for (double slope : new double[] {0, 2e-3, 5e-3, 10e-3, 20e-3}) {
            Estimate now = of(Scene.rings(1.2, 0.8, 0.06, 24, 6), 0.06)
                    .with(Mirror.plain(0.9, slope))
                    .trace(RAYS, 91)
                    .spot()
                    .radius90()
                    .orElseThrow();
            if (last != null) {
                Check.below("slope error " + slope, last, now);
            }
            last = now;
        }
    }

    /** Flat panels' own size is what they lose: a quarter of it at twice the number each way (derived: size squared). */
    @Test
    void finerFlatRingsApproachTheSmoothDish() {
        double radius = 0.025;
        TraceResult smooth = of(Scene.smooth(1.2, 0.8, 0.06), radius).trace(RAYS, 92);
        Estimate best = smooth.spot().interceptFactor();
        Estimate last = Estimate.exact(0);
        for (int k : new int[] {1, 2, 4, 8}) {
            TraceResult cut =
                    of(Scene.rings(1.2, 0.8, 0.06, 12 * k, 3 * k), radius).trace(RAYS, 93 + k);
            assertEquals(36 * k * k, cut.panels());
            Check.below(k + " times as many", last, cut.spot().interceptFactor());
            last = cut.spot().interceptFactor();
            Check.notAbove("cut against smooth", last, best, 0);
        }
        assertTrue(best.value() - last.value() < 0.05, "96 x 24 rings " + last + ", smooth " + best);
        Estimate finest = of(Scene.rings(1.2, 0.8, 0.06, 480, 120), radius)
                .trace(RAYS, 94)
                .spot()
                .interceptFactor();
        Check.same("480 x 120 against smooth", best, finest, 2e-3);
    }

    /** On a disc as wide as a pan the grain of 96 x 24 panels no longer shows. */
    @Test
    void fineFlatRingsEqualTheSmoothDishOnAPansWidth() {
        Estimate smooth =
                of(Scene.smooth(1.2, 0.8, 0.06), 0.12).trace(RAYS, 95).spot().interceptFactor();
        Estimate fine = of(Scene.rings(1.2, 0.8, 0.06, 96, 24), 0.12)
                .trace(RAYS, 96)
                .spot()
                .interceptFactor();
        Check.same("96 x 24 against smooth", smooth, fine, 1e-4);
    }

    /** More strips never lose, and none beats the uncut dish. */
    @Test
    void smoothBeatsEveryCut() {
        Estimate smooth =
                of(Scene.smooth(1.2, 0.6, 0), 0.03).trace(RAYS, 97).ledger().caught();
        Estimate last = Estimate.exact(0);
        for (int n : new int[] {6, 8, 12, 16, 24, 32, 48}) {
            Estimate strips = of(Scene.strips(1.2, 0.6, 0, n), 0.03)
                    .trace(RAYS, 97 + n)
                    .ledger()
                    .caught();
            Estimate rings = of(Scene.rings(1.2, 0.6, 0, n, 6), 0.03)
                    .trace(RAYS, 98 + n)
                    .ledger()
                    .caught();
            Check.notAbove(n + " strips lose", last, strips, 0);
            Check.notAbove(n + " strips against smooth", strips, smooth, 0);
            Check.notAbove(n + " sectors of flat rings against smooth", rings, smooth, 0);
            last = strips;
        }
    }
}
