package simmerpoint.sampling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.WeibullDistribution;
import org.apache.commons.math3.stat.inference.KolmogorovSmirnovTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RayleighTest {
    private static final Rayleigh UNIT = new Rayleigh(1);

    /** Closed form 1 − exp(−x²/2), derived; the same figures stand for light within x standard deviations. */
    @ParameterizedTest
    @CsvSource({
        "0.5, 0.117503",
        "1, 0.393469",
        "1.5, 0.675348",
        "2, 0.864665",
        "2.5, 0.956063",
        "3, 0.988891",
        "1.17741, 0.5",
        "2.14597, 0.9",
        "2.44775, 0.95",
        "3.03485, 0.99"
    })
    void cumulativeMeetsKnownShares(double x, double share) {
        assertEquals(share, UNIT.cumulative(x), 2e-6);
        assertEquals(share, new Rayleigh(7e-3).cumulative(7e-3 * x), 2e-6);
    }

    /** Reference: √(−2 ln(1 − u)) at 30 digits by the mpmath library. */
    @ParameterizedTest
    @CsvSource({
        "1e-20, 1.41421356237309501e-10",
        "1e-6, 0.001414213915926677118",
        "0.25, 0.7585276164409321326",
        "0.5, 1.177410022515474691",
        "0.9, 2.145966026289347343",
        "0.999999, 5.256521769751461505"
    })
    void inverseKeepsItsDigitsAtBothEnds(double u, double x) {
        assertEquals(x, UNIT.inverse(u), 1e-14 * x);
        assertEquals(u, UNIT.cumulative(UNIT.inverse(u)), 1e-14 * u);
    }

    /** Reference: a Weibull distribution of shape 2 and scale σ√2 is the same law (textbook identity). */
    @Test
    void agreesWithCommonsMath() {
        WeibullDistribution weibull = new WeibullDistribution(2, 3 * Math.sqrt(2));
        Rayleigh rayleigh = new Rayleigh(3);
        for (double x = 0.01; x < 20; x += 0.37) {
            assertEquals(weibull.density(x), rayleigh.density(x), 1e-13);
            assertEquals(weibull.cumulativeProbability(x), rayleigh.cumulative(x), 1e-13);
        }
    }

    /** One Kolmogorov-Smirnov test against the same Weibull law, false-alarm rate 0.001. */
    @Test
    void drawsFollowTheLaw() {
        double[] draws = new SplittableRandom(20_002)
                .doubles(50_000)
                .map(new Rayleigh(3)::inverse)
                .toArray();
        double p =
                new KolmogorovSmirnovTest().kolmogorovSmirnovTest(new WeibullDistribution(2, 3 * Math.sqrt(2)), draws);
        assertTrue(p > 0.001, "p " + p);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesASigmaThatIsNone(double sigma) {
        assertThrows(IllegalArgumentException.class, () -> new Rayleigh(sigma));
    }

    @Test
    void nothingLiesBelowZeroOrBeyondOne() {
        assertEquals(0, UNIT.density(-1));
        assertEquals(0, UNIT.cumulative(-1));
        assertEquals(0, UNIT.inverse(0));
        assertEquals(Double.POSITIVE_INFINITY, UNIT.inverse(1));
        assertThrows(IllegalArgumentException.class, () -> UNIT.inverse(Double.NaN));
    }
}
