package simmerpoint.safety.eyes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RetinalMetricTest {
    /** Ho, Ghanbari and Diver 2011 (from memory); figures derived from its formulas apart from this code. */
    @ParameterizedTest
    @CsvSource({
        "0.1, 0.0093, 8.00141, 12.6882",
        "0.5, 0.05, 1.38408, 2.36000",
        "2, 0.1, 1.38408, 1.18000",
        "5, 0.2, 0.865052, 1"
    })
    void theMetricAndItsLimitOfDamage(double cornea, double angle, double retina, double limit) {
        assertEquals(retina, RetinalMetric.retina(cornea, angle), 1e-5);
        assertEquals(limit, RetinalMetric.burnLimit(angle), 1e-4);
    }

    @ParameterizedTest
    @CsvSource({"0.0093, 0.141540"})
    void theLimitOfTheAfterImage(double angle, double limit) {
        assertEquals(limit, RetinalMetric.afterImageLimit(angle), 1e-6);
    }

    /** Only the brightness of the patch counts: four times the light over twice the angle is the same on the retina. */
    @ParameterizedTest
    @CsvSource({"0.05, 0.01", "1, 0.08"})
    void onlyBrightnessCounts(double cornea, double angle) {
        assertEquals(RetinalMetric.retina(cornea, angle), RetinalMetric.retina(4 * cornea, 2 * angle), 1e-12);
        double edge = RetinalMetric.burnAngle(8);
        assertEquals(8, RetinalMetric.burnLimit(edge), 1e-12);
        assertTrue(Double.isInfinite(RetinalMetric.burnAngle(0.9)));
    }
}
