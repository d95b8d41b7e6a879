package simmerpoint.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** Quantiles against tables of the standard normal and Student's law, and closed forms. */
class DistributionsTest {
    /** z(0.975) = 1.959964; t(0.975, 9) = 2.262157: tables. */
    @Test
    void normalAndStudent() {
        assertEquals(10 + 3 * 1.959964, Distributions.normal(10, 3).quantile(0.975), 1e-5);
        assertEquals(10 + 3 * 2.262157, Distributions.student(10, 3, 9).quantile(0.975), 1e-5);
    }

    /** Of the half of a normal law above its mean a tenth lies below the quantile 0.55 of the whole, 0.125661. */
    @Test
    void normalCutOff() {
        Distribution half = Distributions.normalWithin(0, 1, 0, 100);
        assertEquals(0.125661, half.quantile(0.1), 1e-6);
        assertEquals(0, Distributions.normalWithin(0, 0, 0, 1).quantile(0.9));
        assertEquals(1, Distributions.normalWithin(0.9, 0.5, 0, 1).quantile(1 - 1e-16), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> Distributions.normalWithin(2, 1, 0, 1));
    }

    @Test
    void logNormalByItsUpperTenth() {
        Distribution factor = Distributions.logNormal(2, 1.5);
        assertEquals(3, factor.quantile(0.9), 1e-9);
        assertEquals(2, factor.median(), 1e-9);
        assertEquals(2 / 1.5, factor.quantile(0.1), 1e-9);
    }

    /** Standard deviations a/√3 and a/√2 at quantiles: a uniform law's quarter is −a/2, an arcsine law's −a/√2. */
    @Test
    void uniformAndArcsine() {
        assertEquals(-0.5, Distributions.uniform(-1, 1).quantile(0.25), 1e-12);
        assertEquals(-Math.sqrt(0.5), Distributions.arcsine(-1, 1).quantile(0.25), 1e-12);
    }

    @Test
    void refusesAWidthBelowNothing() {
        assertThrows(IllegalArgumentException.class, () -> Distributions.normal(0, -1));
        assertThrows(IllegalArgumentException.class, () -> Distributions.uniform(1, 0));
        assertThrows(IllegalArgumentException.class, () -> Distributions.logNormal(1, 0.5));
        assertThrows(IllegalArgumentException.class, () -> new Quantiles(new double[] {1, Double.NaN}));
    }
}
