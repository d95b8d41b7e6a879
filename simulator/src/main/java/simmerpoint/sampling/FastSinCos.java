package simmerpoint.sampling;

/**
 * Cosine and sine for the ray loop: a table of 4096 points and one rotation by the remainder. Error below 1e-10 (the
 * remainder is under 7.7e-4 rad and its series is cut after the third power: derived here).
 */
public final class FastSinCos {
    private static final int SIZE = 4096;
    private static final double STEP = 2 * Math.PI / SIZE;
    private static final double[] COS = new double[SIZE + 1];
    private static final double[] SIN = new double[SIZE + 1];

    static {
        for (int k = 0; k <= SIZE; k++) {
            COS[k] = StrictMath.cos((k + 0.5) * STEP);
            SIN[k] = StrictMath.sin((k + 0.5) * STEP);
        }
    }

    private FastSinCos() {}

    /**
     * For each u (0 to 1) writes cos and sin of {@code turns}·2π·u.
     *
     * @param u fractions of {@code turns}, not changed
     * @param turns 1 for the full circle, 0.5 for the upper half, 0.25 for a quarter
     * @param n how many
     * @param cos receives the cosines
     * @param sin receives the sines
     */
    public static void fill(double[] u, double turns, int n, double[] cos, double[] sin) {
        double scale = SIZE * turns;
        for (int i = 0; i < n; i++) {
            double x = u[i] * scale;
            int k = (int) x;
            double d = (x - k - 0.5) * STEP;
            double c = COS[k];
            double s = SIN[k];
            double dc = 1 - 0.5 * d * d;
            double ds = d - d * d * d * (1.0 / 6);
            cos[i] = c * dc - s * ds;
            sin[i] = s * dc + c * ds;
        }
    }
}
