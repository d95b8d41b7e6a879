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
    private final float[] sine = new float[STEPS + 2];

    private SunAngleTable(SunShape shape) {
        this.shape = shape;
        for (int k = 0; k <= STEPS; k++) {
            double root = (double) k / STEPS;
            sine[k] = (float) Math.sin(shape.inverse(root * root));
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
    void fill(float[] u, int n, float[] out) {
        for (int i = 0; i < n; i++) {
            out[i] = (float) Math.sqrt(u[i]) * STEPS;
        }
        for (int i = 0; i < n; i++) {
            int k = (int) out[i];
            float a = sine[k];
            out[i] = a + (out[i] - k) * (sine[k + 1] - a);
        }
    }
}
