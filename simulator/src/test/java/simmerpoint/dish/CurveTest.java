package simmerpoint.dish;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Curves of ribs against the paraboloid f 0.5 m with a rim at 0.6 m, and against their own definitions. */
class CurveTest {
    private static final double FOCAL = 0.5;
    private static final double RIM = 0.6;
    private static final Parabola PARABOLA = new Parabola(FOCAL);

    /** 20.000 mm and 103.08 mrad at the rim: 1 − 0.8 and atan 0.75 − atan 0.6 (R 1 m; derived here). */
    @Test
    void aCircleIsHigherAndSteeperAtTheRim() {
        Profile circle = Curve.CIRCLE.of(FOCAL, RIM);
        assertEquals(0.020000, circle.height(RIM) - PARABOLA.height(RIM), 1e-12);
        assertEquals(0.10308, Math.atan(circle.slope(RIM)) - Math.atan(PARABOLA.slope(RIM)), 1e-4 * 0.10308);
        assertEquals(circle.radiusAtArcLength(0.4), Math.sin(0.4), 1e-12);
    }

    /** c 1.028674 m, up to 1.261 mm below at r 0.425, slope angles 4.410 mrad apart in the root mean square along the rib (derived by numpy). */
    @Test
    void aChainHangsALittleBelowTheParabolaAsDeep() {
        Profile chain = Curve.HANGING_CHAIN.of(FOCAL, RIM);
        assertEquals(0.18, chain.height(RIM), 1e-12);
        assertEquals(0, chain.height(0), 0);
        assertEquals(1.028674, chain.arcLength(RIM) / chain.slope(RIM), 1e-6);
        double lowest = 0;
        double at = 0;
        double squares = 0;
        int steps = 6000;
        for (int i = 0; i < steps; i++) {
            double r = RIM * (i + 0.5) / steps;
            double below = PARABOLA.height(r) - chain.height(r);
            at = below > lowest ? r : at;
            lowest = Math.max(lowest, below);
            squares += Math.pow(Math.atan(chain.slope(r)) - Math.atan(PARABOLA.slope(r)), 2) / steps;
        }
        assertEquals(1.261e-3, lowest, 5e-7);
        assertEquals(0.425, at, 1e-3);
        assertEquals(4.40983e-3, Math.sqrt(squares), 1e-6);
    }

    /** Slopes by differences, lengths by quadrature, and both ways back. */
    @ParameterizedTest
    @EnumSource(Curve.class)
    void everyCurveAgreesWithItself(Curve curve) {
        for (Profile profile :
                new Profile[] {curve.of(FOCAL, RIM), curve.of(FOCAL, RIM).stretched(0.96)}) {
            for (double r : new double[] {0.01, 0.2, 0.45, 0.57}) {
                double slope = (profile.height(r + 1e-6) - profile.height(r - 1e-6)) / 2e-6;
                assertEquals(slope, profile.slope(r), 1e-9);
                double length = new IterativeLegendreGaussIntegrator(12, 1e-13, 1e-14)
                        .integrate(100_000, x -> Math.hypot(1, profile.slope(x)), 0, r);
                assertEquals(length, profile.arcLength(r), 1e-12);
                assertEquals(r, profile.radiusAtArcLength(length), 1e-12);
                assertEquals(r, profile.radiusAtHeight(profile.height(r)), 1e-12);
            }
            assertEquals(0, profile.arcLength(0), 0);
        }
    }
}
