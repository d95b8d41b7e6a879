package simmerpoint.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class MonotoneRootFinderTest {
    @Test
    void findsTheRootOfASmoothFunctionFromAnywhere() {
        for (double start : new double[] {0, 1e-9, 0.5, 2.9, 3, -7, Double.NaN}) {
            double x = MonotoneRootFinder.find(t -> t * t * t, t -> 3 * t * t, 2, 0, 3, start);
            assertEquals(Math.cbrt(2), x, 1e-14);
        }
    }

    @Test
    void halvesWhereTheSlopeSaysNothing() {
        double x = MonotoneRootFinder.find(t -> t < 1 ? 0 : t - 1, t -> 0, 0.25, 0, 3, 0.1);
        assertEquals(1.25, x, 1e-14);
    }

    @Test
    void keepsItsDigitsFarDown() {
        double x = MonotoneRootFinder.find(t -> t * t, t -> 2 * t, 1e-30, 0, 1, 0.3);
        assertEquals(1e-15, x, 1e-28);
    }

    @Test
    void standsStillAtAStep() {
        double x = MonotoneRootFinder.find(t -> t < 0.7 ? 0 : 1, t -> 0, 0.5, 0, 1, 0.2);
        assertEquals(0.7, x, 1e-15);
        assertTrue(x > 0 && x < 1);
    }
}
