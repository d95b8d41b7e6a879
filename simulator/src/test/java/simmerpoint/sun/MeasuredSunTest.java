package simmerpoint.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** The table has a dark stretch, a steep step, a last row that is not dark, and a unit of its own. */
class MeasuredSunTest extends SunShapeContract {
    private static final double[] ANGLES = {0, 2e-3, 4.5e-3, 4.7e-3, 10e-3, 11e-3, 20e-3, 30e-3};
    private static final double[] RADIANCES = {250, 225, 125, 2.5, 0, 0, 1, 0.5};

    @Override
    SunShape shape() {
        return MeasuredSun.of("lake hut", ANGLES, RADIANCES);
    }

    @Override
    double radianceByHand(double angle) {
        double sum = 0;
        for (int i = 0; i < ANGLES.length; i++) {
            double left = i == 0 ? -1 : ANGLES[i - 1];
            double right = i == ANGLES.length - 1 ? 1 : ANGLES[i + 1];
            double hat = Math.min((angle - left) / (ANGLES[i] - left), (right - angle) / (right - ANGLES[i]));
            sum += Math.max(0, hat) * RADIANCES[i] / 250;
        }
        return sum;
    }

    @Override
    double[] corners() {
        return ANGLES;
    }

    @Override
    long seed() {
        return 31_005;
    }

    /** A flat table is a uniform disc, whose formulas are exact. */
    @Test
    void flatTableIsAUniformDisc() {
        SunShape flat = MeasuredSun.of("flat", new double[] {0, 1e-3, 4.65e-3}, new double[] {7, 7, 7});
        UniformDiscSun disc = new UniformDiscSun(4.65e-3);
        assertEquals(sigma(disc), sigma(flat), 1e-12);
        for (int i = 0; i <= 100; i++) {
            assertEquals(disc.inverse(i / 100.0), flat.inverse(i / 100.0), 1e-15);
            assertEquals(disc.cumulative(i * 4.65e-5), flat.cumulative(i * 4.65e-5), 1e-13);
        }
    }

    /** Small-angle closed form of a cone of radius a, derived: σ² = ½ ∫θ³(1 − θ/a) / ∫θ(1 − θ/a) = 3a²/20. */
    @Test
    void coneHasTheSigmaOfACone() {
        SunShape cone = MeasuredSun.of("cone", new double[] {0, 1e-3, 4e-3}, new double[] {4, 3, 0});
        assertEquals(4e-3 * Math.sqrt(0.15), sigma(cone, 1e-3, 4e-3), 1e-8);
    }

    @Test
    void theUnitOfTheRadianceDoesNotMatter() {
        double[] dim = {2.5e-7, 2.25e-7, 1.25e-7, 2.5e-9, 0, 0, 1e-9, 5e-10};
        SunShape same = MeasuredSun.of("lake hut", ANGLES, dim);
        for (double u = 0.05; u < 1; u += 0.05) {
            assertEquals(shape().inverse(u), same.inverse(u), 1e-14);
        }
    }

    @Test
    void laterChangesOfTheArraysDoNotReachTheSun() {
        double[] angles = ANGLES.clone();
        double[] radiances = RADIANCES.clone();
        SunShape sun = MeasuredSun.of("lake hut", angles, radiances);
        angles[2] = 0;
        radiances[0] = 0;
        assertEquals(shape(), sun);
        assertEquals(shape().hashCode(), sun.hashCode());
        assertNotEquals(MeasuredSun.of("lake hut", ANGLES, radiancesWith(3, 3)), sun);
    }

    @Test
    void saysHowManyRows() {
        assertEquals("table lake hut, 8 rows to 30 mrad", shape().describe());
    }

    @Test
    void refusesFiguresThatAreNoSun() {
        refused(new double[] {0, 1e-3}, new double[] {1, 1});
        refused(new double[] {0, 1e-3, 2e-3}, new double[] {1, 1});
        refused(new double[] {1e-4, 1e-3, 2e-3}, new double[] {1, 1, 1});
        refused(new double[] {0, 2e-3, 2e-3}, new double[] {1, 1, 1});
        refused(new double[] {0, Double.NaN, 2e-3}, new double[] {1, 1, 1});
        refused(new double[] {0, 1e-3, 0.11}, new double[] {1, 1, 1});
        refused(ANGLES, radiancesWith(4, -1));
        refused(ANGLES, radiancesWith(4, Double.NaN));
        refused(ANGLES, radiancesWith(0, 0));
        refused(ANGLES, radiancesWith(0, 0.1));
    }

    private static double[] radiancesWith(int row, double value) {
        double[] changed = RADIANCES.clone();
        changed[row] = value;
        return changed;
    }

    private static void refused(double[] angles, double[] radiances) {
        assertThrows(IllegalArgumentException.class, () -> MeasuredSun.of("bad", angles, radiances));
    }
}
