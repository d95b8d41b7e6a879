package simmerpoint.tracing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class MirrorErrorModelTest {
    /** A beam spread b counts as a tilt of b/2 in the plane of incidence; variances add. */
    @Test
    void slopeAndHalfTheSpreadAddAsSquares() {
        assertEquals(0.005, new MirrorErrorModel(9e-6, 64e-6, 0, 0).largestStandardDeviation(), 1e-15);
    }

    @Test
    void theWiderSpreadThatAnyRayTakesCounts() {
        assertEquals(0.004, new MirrorErrorModel(0, 16e-6, 64e-6, 0.1).largestStandardDeviation(), 1e-15);
        assertEquals(0.002, new MirrorErrorModel(0, 16e-6, 64e-6, 0).largestStandardDeviation(), 1e-15);
        assertEquals(0.001, new MirrorErrorModel(0, 16e-6, 4e-6, 1).largestStandardDeviation(), 1e-15);
    }

    @Test
    void isZeroOnlyWithoutAnyError() {
        assertTrue(new MirrorErrorModel(0, 0, 0, 0).isZero());
        assertTrue(new MirrorErrorModel(0, 0, 9e-6, 0).isZero());
        assertFalse(new MirrorErrorModel(1e-12, 0, 0, 0).isZero());
        assertFalse(new MirrorErrorModel(0, 0, 9e-6, 0.01).isZero());
    }
}
