package simmerpoint.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class AngularWeightTest {
    @Test
    void isSineTimesCosine() {
        for (double x = 0; x <= SunShapeChecks.WIDEST; x += 1e-4) {
            assertEquals(Math.sin(x) * Math.cos(x), AngularWeight.at(x), 5e-16 * x, "x " + x);
        }
    }
}
