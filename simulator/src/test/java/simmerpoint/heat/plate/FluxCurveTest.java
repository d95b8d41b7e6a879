package simmerpoint.heat.plate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class FluxCurveTest {
    @Test
    void aLineStaysALineBeyondItsEnds() {
        FluxCurve line = FluxCurve.linear(25, 20);
        assertEquals(25 * 480, line.at(500), 1e-9);
        assertEquals(-25 * 60, line.at(-40), 1e-9);
        assertEquals(25, line.slopeAt(300), 1e-9);
    }

    @Test
    void sumsAreSums() {
        FluxCurve square = FluxCurve.of(0, 100, 1, t -> t * t);
        assertEquals(50 * 50 + 25 * 30, square.plus(FluxCurve.linear(25, 20)).at(50), 1e-9);
    }

    /** Coefficient behind a resistance: 1/(1/h + r), the textbook's series. */
    @Test
    void aLayerActsInSeries() {
        FluxCurve behind = FluxCurve.linear(1000, 100).behind(0.004);
        assertEquals(50 / (1 / 1000.0 + 0.004), behind.at(150), 1e-6);
    }
}
