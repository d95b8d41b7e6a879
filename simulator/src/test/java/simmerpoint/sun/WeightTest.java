package simmerpoint.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class WeightTest {
    @Test
    void isSineTimesCosine() {
        for (double x = 0; x <= Checks.WIDEST; x += 1e-4) {
            assertEquals(Math.sin(x) * Math.cos(x), Weight.at(x), 5e-16 * x, "x " + x);
        }
    }
}
