package simmerpoint.dish.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.Parabola;

class RingBordersTest {
    private static final Parabola PARABOLA = new Parabola(0.5);

    private static RingBorders borders(RingSpacing spacing, int rings, double hub) {
        return new RingBorders(rings, spacing, new DishPlan(1.2, 0.5, 2 * hub, 0, new FlatRings(24, rings, spacing)));
    }

    private static void equalSteps(RingSpacing spacing, DoubleUnaryOperator of) {
        RingBorders b = borders(spacing, 7, 0.05);
        double step = (of.applyAsDouble(0.6) - of.applyAsDouble(0.05)) / 7;
        assertEquals(0.05, b.radius[0]);
        assertEquals(0.6, b.radius[7]);
        assertEquals(7, b.rings());
        for (int j = 0; j < 7; j++) {
            assertEquals(step, of.applyAsDouble(b.radius[j + 1]) - of.applyAsDouble(b.radius[j]), 1e-12, "ring " + j);
        }
    }

    @Test
    void equalWidthsAreEqualInPlan() {
        equalSteps(RingSpacing.EQUAL_WIDTH, r -> r);
    }

    @Test
    void equalDepthStepsRiseEqually() {
        equalSteps(RingSpacing.EQUAL_DEPTH_STEP, PARABOLA::height);
    }

    @Test
    void equalLengthsAreEqualAlongTheRib() {
        equalSteps(RingSpacing.EQUAL_LENGTH, PARABOLA::arcLength);
    }

    /** Derived: a chord over a ring of width w dips w²/16f below it at most, wherever the ring is. */
    @Test
    void equalWidthsAreEqualDepthsOfCut() {
        RingBorders b = borders(RingSpacing.EQUAL_WIDTH, 5, 0);
        for (int j = 0; j < 5; j++) {
            double middle = (b.radius[j] + b.radius[j + 1]) / 2;
            double chord = (PARABOLA.height(b.radius[j]) + PARABOLA.height(b.radius[j + 1])) / 2;
            assertEquals(0.12 * 0.12 / 8, chord - PARABOLA.height(middle), 1e-12);
        }
    }

    @ParameterizedTest
    @EnumSource
    void aRadiusIsFoundInItsRing(RingSpacing spacing) {
        SplittableRandom random = new SplittableRandom(73_001);
        for (int rings : new int[] {1, 2, 6, 50}) {
            for (double hub : new double[] {0, 0.03, 0.5}) {
                RingBorders b = borders(spacing, rings, hub);
                for (int i = 0; i < 2000; i++) {
                    double r = random.nextDouble(hub, 0.6);
                    int wanted = 0;
                    while (r >= b.radius[wanted + 1]) {
                        wanted++;
                    }
                    assertEquals(wanted, b.ringAt(r * r / 0.36), "radius " + r);
                }
                assertEquals(rings - 1, b.ringAt(1));
            }
        }
    }
}
