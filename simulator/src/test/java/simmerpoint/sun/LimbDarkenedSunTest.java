package simmerpoint.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LimbDarkenedSunTest extends SunShapeContract {
    private static final double HALF_ANGLE = 4.65e-3;

    @Override
    SunShape shape() {
        return new LimbDarkenedSun(HALF_ANGLE);
    }

    /** The same law in powers of s = 1 − μ: 1 − (0.93 − 0.46) s − 0.23 s². */
    @Override
    double radianceByHand(double angle) {
        double sine = Math.sin(angle) / Math.sin(HALF_ANGLE);
        double s = 1 - Math.sqrt(Math.max(0, (1 - sine) * (1 + sine)));
        return 1 - 0.47 * s - 0.23 * s * s;
    }

    @Override
    long seed() {
        return 31_002;
    }

    /** Derived from the law by hand: mean over centre 0.3 + 2/3 · 0.93 − 0.23/2 = 0.805, σ = 0.472647 half-angles. */
    @Test
    void momentsFollowFromTheLaw() {
        assertEquals(2.19781e-3, sigma(shape()), 1e-8);
        double centre = shape().density(1e-9) / new UniformDiscSun(HALF_ANGLE).density(1e-9);
        assertEquals(1.242236, centre, 1e-6);
    }

    /** Neckel and Labs 1994, as quoted elsewhere: the disc's mean is 0.80 to 0.85 of the centre from 535 to 735 nm. */
    @Test
    void meanBrightnessLiesInTheMeasuredBand() {
        double mean = new UniformDiscSun(HALF_ANGLE).density(1e-9) / shape().density(1e-9);
        assertEquals(0.825, mean, 0.025);
    }

    /** Observed brightness by μ, from a table of a course page of Brigham Young University; the law is up to 0.05 low. */
    @ParameterizedTest
    @CsvSource({
        "1.0, 1.000, 1.0000",
        "0.8, 0.898, 0.8968",
        "0.6, 0.788, 0.7752",
        "0.4, 0.670, 0.6352",
        "0.2, 0.522, 0.4768"
    })
    void brightnessIsNearTheObserved(double mu, double observed, double law) {
        double angle = Math.asin(Math.sqrt(1 - mu * mu) * Math.sin(HALF_ANGLE));
        assertEquals(observed, shape().relativeRadiance(angle), 0.05);
        assertEquals(law, shape().relativeRadiance(angle), 1e-6);
    }

    @Test
    void meanSunIsAsWideAsTheUniformOne() {
        assertEquals(UniformDiscSun.MEAN_SUN.halfAngle(), LimbDarkenedSun.MEAN_SUN.largestAngle());
        assertEquals("limb-darkened disc, half-angle 4.65 mrad", LimbDarkenedSun.MEAN_SUN.describe());
    }

    @Test
    void refusesAHalfAngleThatIsNone() {
        assertThrows(IllegalArgumentException.class, () -> new LimbDarkenedSun(0));
        assertThrows(IllegalArgumentException.class, () -> new LimbDarkenedSun(Double.NaN));
    }
}
