package simmerpoint.dish.built;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.apache.commons.math3.stat.inference.KolmogorovSmirnovTest;
import org.junit.jupiter.api.Test;
import simmerpoint.dish.MirrorPoints;

class PanelTiltsTest {
    private static final int PANELS = 20_000;

    /** Normals of all panels after tilting, all of them along {@code (nx, ny, nz)} before. */
    private static MirrorPoints tilted(double sigma, long seed, int panels, double nx, double ny, double nz) {
        MirrorPoints points = new MirrorPoints(panels);
        Arrays.fill(points.nx, nx);
        Arrays.fill(points.ny, ny);
        Arrays.fill(points.nz, nz);
        Arrays.setAll(points.panel, k -> k);
        PanelTilts.draw(panels, sigma, seed).apply(points, panels);
        return points;
    }

    /**
     * Tilts about the two axes of level panels: a Kolmogorov-Smirnov test of each against the normal law at 0.0005, and
     * the standard deviation within 4 of its standard errors, σ/√2n (1 in 16,000).
     */
    @Test
    void tiltsAreNormalAboutBothAxes() {
        double sigma = 1e-3;
        MirrorPoints points = tilted(sigma, 7, PANELS, 0, 0, 1);
        for (double[] axis : new double[][] {points.nx, points.ny}) {
            double p = new KolmogorovSmirnovTest().kolmogorovSmirnovTest(new NormalDistribution(0, sigma), axis);
            assertTrue(p > 0.0005, "p " + p);
            double error = sigma / Math.sqrt(2.0 * PANELS);
            assertEquals(sigma, new StandardDeviation().evaluate(axis), 4 * error);
        }
    }

    /** On steep panels as well: one axis level along y, the other up the slope. */
    @Test
    void tiltsAreAsLargeOnSteepPanels() {
        double sigma = 1e-3;
        MirrorPoints points = tilted(sigma, 8, PANELS, 0.6, 0, 0.8);
        double[] upSlope = new double[PANELS];
        Arrays.setAll(upSlope, k -> 0.8 * points.nx[k] - 0.6 * points.nz[k]);
        double error = sigma / Math.sqrt(2.0 * PANELS);
        assertEquals(sigma, new StandardDeviation().evaluate(upSlope), 4 * error);
        assertEquals(sigma, new StandardDeviation().evaluate(points.ny), 4 * error);
        assertEquals(0, new PearsonsCorrelation().correlation(upSlope, points.ny), 4 / Math.sqrt(PANELS));
    }

    /**
     * A panel's tilts tell nothing about those of the next ones, about the same axis or the other: 16 correlations, each
     * within 4.5 standard errors (false alarm of all together 1e-4).
     */
    @Test
    void neighboursAreIndependent() {
        MirrorPoints points = tilted(1e-3, 9, PANELS, 0, 0, 1);
        for (int later = 1; later <= 4; later++) {
            for (double[] a : new double[][] {points.nx, points.ny}) {
                for (double[] b : new double[][] {points.nx, points.ny}) {
                    double c = new PearsonsCorrelation()
                            .correlation(
                                    Arrays.copyOfRange(a, 0, PANELS - later), Arrays.copyOfRange(b, later, PANELS));
                    assertEquals(0, c, 4.5 / Math.sqrt(PANELS), "panels " + later + " apart");
                }
            }
        }
    }

    @Test
    void twoDishesDiffer() {
        MirrorPoints a = tilted(1e-3, 1, PANELS, 0, 0, 1);
        MirrorPoints b = tilted(1e-3, 2, PANELS, 0, 0, 1);
        assertEquals(0, new PearsonsCorrelation().correlation(a.nx, b.nx), 4 / Math.sqrt(PANELS));
    }

    /** So that two sizes of tilt, or two numbers of panels, can be compared on the same dish. */
    @Test
    void aPanelDrawsTheSameDeviatesWhateverTheSizeOrNumber() {
        MirrorPoints small = tilted(1e-6, 3, 50, 0, 0, 1);
        MirrorPoints large = tilted(1e-4, 3, 50, 0, 0, 1);
        double[] scaled = Arrays.stream(small.nx).map(x -> 100 * x).toArray();
        assertArrayEquals(scaled, large.nx, 1e-10);
        MirrorPoints more = tilted(1e-4, 3, 500, 0, 0, 1);
        assertArrayEquals(large.nx, Arrays.copyOf(more.nx, 50));
    }

    @Test
    void normalsStayUnit() {
        MirrorPoints points = tilted(0.1, 4, 500, 0.48, -0.36, 0.8);
        for (int k = 0; k < 500; k++) {
            double length2 = points.nx[k] * points.nx[k] + points.ny[k] * points.ny[k] + points.nz[k] * points.nz[k];
            assertEquals(1, length2, 1e-14);
        }
    }

    @Test
    void noSpreadMeansNoTilt() {
        assertTrue(PanelTilts.draw(5, 0, 1).none());
        assertFalse(PanelTilts.draw(5, 1e-9, 1).none());
    }
}
