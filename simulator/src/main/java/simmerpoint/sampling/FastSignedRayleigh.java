package simmerpoint.sampling;

/**
 * The signed distance x from the centre of a standard two-dimensional Gaussian along a line through the centre, for the ray
 * loop: density |x|/2 · exp(−x²/2), cumulative F(x) = ½exp(−x²/2) below 0 and 1 − ½exp(−x²/2) above.
 *
 * <p>With the line's direction φ uniform on [0, π) the point (x cos φ, x sin φ) has two independent standard normal
 * coordinates. Derived here: both ends of the line together put the density (1/π) · 2 · (|x|/2) exp(−x²/2) on each
 * half-turn, which divided by the circumference is exp(−x²/2)/2π per unit area. The equivalence of sampling two axes and
 * sampling a direction with a distance is also the subject of J. Solar Energy Eng., doi 10.1115/1.4004035 (cited, not
 * seen).
 */
public final class FastSignedRayleigh {
    private static final int BITS = 5;
    private static final int SHIFT = 23 - BITS;

    /** Half a step of single precision below 1, counted double. */
    private static final float LEAST = 0x1p-24f;

    private static final int FIRST = Float.floatToRawIntBits(LEAST) >>> SHIFT;
    private static final int CELLS = (Float.floatToRawIntBits(1) >>> SHIFT) - FIRST + 1;

    /** −2 ln of the middle of each step of the table, and 1 ÷ that middle. */
    private static final float[] SQUARE = new float[CELLS];

    private static final float[] INVERSE = new float[CELLS];

    static {
        for (int k = 0; k < CELLS; k++) {
            float from = Float.intBitsToFloat((FIRST + k) << SHIFT);
            float to = Float.intBitsToFloat((FIRST + k + 1) << SHIFT);
            INVERSE[k] = (float) (2 / ((double) from + to));
            SQUARE[k] = (float) (2 * StrictMath.log(INVERSE[k]));
        }
    }

    private FastSignedRayleigh() {}

    /**
     * Probability below each x, to 2e-5: fit for placing strata, which weigh what was placed. Never below 0 nor above 1, and
     * exactly one of them beyond 5.9.
     */
    public static void roughCumulative(float[] x, int n, float[] out) {
        for (int i = 0; i < n; i++) {
            out[i] = expMinus(0.5f * x[i] * x[i]);
        }
        for (int i = 0; i < n; i++) {
            out[i] = 0.5f + 0.5f * ArrayFunctions.sign(x[i]) * (1 - out[i]);
        }
    }

    /** exp(−y) for y ≥ 0: 1 ÷ the 64th power of the series of exp(y/64), infinite where that is too large. */
    private static float expMinus(float y) {
        float t = y * (1f / 64);
        float e = 1 + t * (1 + t * (0.5f + t * (1f / 6 + t * (1f / 24 + t * (1f / 120)))));
        e *= e;
        e *= e;
        e *= e;
        e *= e;
        e *= e;
        return 1 / (e * e);
    }

    /**
     * Replaces each probability by its quantile: x² = −2 ln(2y) below the middle, by a table over the exponent and five bits of
     * 2y and three terms of ln(1 + r), |r| ≤ 1/64 (the fourth is below 3e-8: derived here). What is nearer to an end than 3e-8,
     * half a step of single precision, counts as that: no x is beyond 5.8. Three loops, so that the compiler vectorises first and
     * last (measured: half the time of one loop).
     *
     * @param y probabilities from 0 to 1 but for rounding, replaced by the quantiles
     * @param n how many
     * @param scratch room for n numbers
     */
    public static void inverse(float[] y, int n, float[] scratch) {
        for (int i = 0; i < n; i++) {
            scratch[i] = ArrayFunctions.positivePart(1 - 2 * Math.abs(y[i] - 0.5f)) + LEAST;
        }
        for (int i = 0; i < n; i++) {
            int k = (Float.floatToRawIntBits(scratch[i]) >>> SHIFT) - FIRST;
            float r = scratch[i] * INVERSE[k] - 1;
            scratch[i] = SQUARE[k] - r * (2 - r * (1 - r * (2f / 3)));
        }
        for (int i = 0; i < n; i++) {
            y[i] = ArrayFunctions.sign(y[i] - 0.5f) * (float) Math.sqrt(Math.abs(scratch[i]));
        }
    }
}
