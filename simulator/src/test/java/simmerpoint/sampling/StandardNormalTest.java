package simmerpoint.sampling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.inference.KolmogorovSmirnovTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StandardNormalTest {
    /** Reference: the complementary error function at 400 digits and Newton's method, by the mpmath library. */
    @ParameterizedTest
    @CsvSource({
        "1e-300, -37.04709629936119924",
        "1e-100, -21.27345356096532429",
        "1e-20, -9.26234008979840758",
        "1e-10, -6.361340902404056199",
        "1e-6, -4.753424308822898957",
        "0.001, -3.090232306167813535",
        "0.025, -1.959963984540054212",
        "0.07, -1.475791028179170686",
        "0.075, -1.439531470938455935",
        "0.2, -0.8416212335729141655",
        "0.4, -0.2533471031357997413",
        "0.499999, -2.506628274566559378e-6"
    })
    void inverseMeetsAReferenceOfManyDigits(double u, double x) {
        assertEquals(x, StandardNormal.inverse(u), 3e-15 * Math.abs(x) + 1e-22);
        if (u > 1e-6) {
            assertEquals(-x, StandardNormal.inverse(1 - u), 1e-9 * Math.abs(x));
        }
    }

    /** Reference: as above. */
    @ParameterizedTest
    @CsvSource({
        "-37, 5.725571222524576823e-300",
        "-30, 4.90671392714818706e-198",
        "-20, 2.753624118606233695e-89",
        "-10, 7.619853024160526066e-24",
        "-5, 2.866515718791939117e-7",
        "-2, 0.0227501319481792072",
        "-0.5, 0.3085375387259868964",
        "0, 0.5",
        "1, 0.8413447460685429486",
        "3, 0.9986501019683699055",
        "5, 0.9999997133484281208",
        "8, 0.9999999999999993779"
    })
    void cumulativeMeetsAReferenceOfManyDigits(double x, double u) {
        assertEquals(u, StandardNormal.cumulative(x), 1e-12 * u);
    }

    @Test
    void inverseUndoesCumulativeFarIntoTheTail() {
        for (double x = -37; x <= 5; x += 0.137) {
            assertEquals(x, StandardNormal.inverse(StandardNormal.cumulative(x)), 1e-9 * Math.abs(x) + 1e-14, "x " + x);
        }
    }

    /** Derivative by central difference, error h²/6 of the third derivative plus rounding / h. */
    @Test
    void densityIsTheDerivativeOfCumulative() {
        double h = 1e-4;
        for (double x = -6; x <= 6; x += 0.25) {
            double slope = (StandardNormal.cumulative(x + h) - StandardNormal.cumulative(x - h)) / (2 * h);
            assertEquals(
                    slope, StandardNormal.density(x), 1e-8 * StandardNormal.density(x) * (1 + x * x) + 2e-12, "x " + x);
        }
    }

    /** One Kolmogorov-Smirnov test, false-alarm rate 0.001. */
    @Test
    void drawsAreNormal() {
        SplittableRandom random = new SplittableRandom(20_001);
        double[] draws = random.doubles(50_000).map(StandardNormal::inverse).toArray();
        double p = new KolmogorovSmirnovTest().kolmogorovSmirnovTest(new NormalDistribution(0, 1), draws);
        assertTrue(p > 0.001, "p " + p);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1e-9, 1.000000001, Double.NaN})
    void inverseRefusesWhatIsNoShare(double u) {
        assertThrows(IllegalArgumentException.class, () -> StandardNormal.inverse(u));
    }

    @Test
    void theEndsAreInfinite() {
        assertEquals(Double.NEGATIVE_INFINITY, StandardNormal.inverse(0));
        assertEquals(Double.POSITIVE_INFINITY, StandardNormal.inverse(1));
        assertEquals(0, StandardNormal.inverse(0.5));
    }
}
