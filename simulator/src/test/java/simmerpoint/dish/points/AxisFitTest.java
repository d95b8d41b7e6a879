package simmerpoint.dish.points;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.RotationConvention;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The axis of a paraboloid that was turned by a known angle before it was measured; turned here by a library's rotations. */
class AxisFitTest {
    private static final double FOCAL = 0.7;
    private static final double RADIUS = 0.6;

    /** The farthest point of a grid of 5 cm within that lies 11 × 4 steps from the middle. */
    private static final double FARTHEST = 0.05 * Math.sqrt(137);

    /** A grid of 5 cm, its axis leaning so far from z towards an angle from x, with noise in z. */
    private static MeasuredPoints grid(double lean, double towards, double noise, long seed) {
        Vector3D hinge = new Vector3D(-Math.sin(towards), Math.cos(towards), 0);
        Rotation turn = new Rotation(hinge, lean, RotationConvention.VECTOR_OPERATOR);
        Random chance = new Random(seed);
        double[][] points = new double[3][25 * 25];
        int n = 0;
        for (int i = -12; i <= 12; i++) {
            for (int j = -12; j <= 12; j++) {
                double x = 0.05 * i;
                double y = 0.05 * j;
                if (Math.hypot(x, y) < RADIUS) {
                    Vector3D p = turn.applyTo(new Vector3D(x, y, (x * x + y * y) / (4 * FOCAL)));
                    points[0][n] = p.getX() + 0.3;
                    points[1][n] = p.getY();
                    points[2][n++] = p.getZ() + noise * chance.nextGaussian();
                }
            }
        }
        for (int k = 0; k < 3; k++) {
            points[k] = Arrays.copyOf(points[k], n);
        }
        return new MeasuredPoints(points[0], points[1], points[2]);
    }

    @ParameterizedTest
    @CsvSource({"0.5, 30", "4, 200", "15, 95", "25, -10"})
    void theAxisOfAParaboloidIsFoundExactly(double degrees, double towards) {
        double lean = Math.toRadians(degrees);
        AxisFit fit = AxisFit.of(grid(lean, Math.toRadians(towards), 0, 1));
        assertEquals(lean, fit.angle(), 1e-8);
        assertEquals(Math.tan(lean) * Math.cos(Math.toRadians(towards)), fit.slopeX(), 1e-8);
        assertEquals(Math.tan(lean) * Math.sin(Math.toRadians(towards)), fit.slopeY(), 1e-8);
        assertTrue(fit.leans() && fit.deviation() < 1e-7);
        MeasuredShape straight = new MeasuredShape("p", grid(lean, Math.toRadians(towards), 0, 1)).straightened();
        assertEquals(FOCAL, straight.focalLength(), 1e-7);
        assertEquals(0, straight.offParaboloid(), 1e-9);
        assertEquals(FARTHEST, straight.circle()[2], 1e-6);
        assertFalse(straight.axis().leans());
    }

    /** Its doubt is the spread over 200 tables with noise of 1 mm: a standard deviation is known to 5 %, so 4 of its errors are a fifth. */
    @Test
    void theDoubtIsTheSpread() {
        double lean = Math.toRadians(4);
        int tables = 200;
        double squares = 0;
        double told = 0;
        for (int seed = 0; seed < tables; seed++) {
            AxisFit fit = AxisFit.of(grid(lean, 0.4, 0.001, seed));
            squares += Math.pow(fit.angle() - lean, 2) / tables;
            told += fit.deviation() / tables;
        }
        assertEquals(1, told / Math.sqrt(squares), 0.2);
    }

    /** A twisted dish with a dent beside its middle: what is left over is smooth, and says nothing of an axis. */
    @Test
    void dentsAreNoLean() {
        MeasuredPoints straight = grid(0, 0, 0, 1);
        double[] z = straight.z().clone();
        for (int i = 0; i < z.length; i++) {
            double x = straight.x()[i] - 0.3;
            double y = straight.y()[i];
            z[i] += 0.006 * x * y - 0.003 * Math.exp(-(Math.pow(x - 0.2, 2) + Math.pow(y + 0.1, 2)) / 0.03);
        }
        AxisFit fit = AxisFit.of(new MeasuredPoints(straight.x(), straight.y(), z));
        assertFalse(fit.leans(), fit.toString());
    }

    /** Of a dish that stood straight it is told in 1.1 % of all tables, by a Rayleigh law with 3 standard deviations: at most 8 of 200. */
    @Test
    void aStraightDishSeldomSeemsToLean() {
        int leaning = 0;
        for (int seed = 0; seed < 200; seed++) {
            leaning += AxisFit.of(grid(0, 0, 0.003, seed)).leans() ? 1 : 0;
        }
        assertTrue(leaning <= 8, leaning + " of 200");
    }
}
