package simmerpoint.tracing;

import simmerpoint.sun.SunShape;

/**
 * Sine of a ray's angle from the sun's centre as a function of the square root of a uniform number, linearly interpolated:
 * exact for a uniform disc, and within 1/2048 of the light for any shape, since no step holds more (largest at the edge; a
 * Gaussian sun comes out 0.1 % too wide).
 */
final class SunAngleTable {
    private static final int STEPS = 4096;

    /** The table made last: studies trace many scenes under one sun. */
    private static volatile SunAngleTable last;

    private final SunShape shape;
    private final double[] sine = new double[STEPS + 2];

    private SunAngleTable(SunShape shape) {
        this.shape = shape;
        for (int k = 0; k <= STEPS; k++) {
            double root = (double) k / STEPS;
            sine[k] = Math.sin(shape.inverse(root * root));
        }
        sine[STEPS + 1] = sine[STEPS];
    }

    /** The table of {@code shape}. */
    static SunAngleTable of(SunShape shape) {
        SunAngleTable table = last;
        if (table == null || (table.shape != shape && !table.shape.equals(shape))) {
            table = new SunAngleTable(shape);
            last = table;
        }
        return table;
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
