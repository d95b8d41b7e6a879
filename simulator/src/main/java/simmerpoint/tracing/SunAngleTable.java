package simmerpoint.tracing;

import simmerpoint.sun.SunShape;

/**
 * Sine of a ray's angle from the sun's centre as a function of the square root of a uniform number, linearly interpolated:
 * exact for a uniform disc, and within 1/2048 of the light for any shape, since no step holds more (largest at the edge; a
 * Gaussian sun comes out 0.1 % too wide).
 */
final class SunAngleTable {
    private static final int STEPS = 4096;

    private final double[] sine = new double[STEPS + 2];

    SunAngleTable(SunShape shape) {
        for (int k = 0; k <= STEPS; k++) {
            double root = (double) k / STEPS;
            sine[k] = Math.sin(shape.inverse(root * root));
        }
        sine[STEPS + 1] = sine[STEPS];
    }

    /** Sines for uniform numbers. */
    void fill(double[] u, int n, double[] out) {
        for (int i = 0; i < n; i++) {
            double x = Math.sqrt(u[i]) * STEPS;
            int k = (int) x;
            double a = sine[k];
            out[i] = a + (x - k) * (sine[k + 1] - a);
        }
    }
}
