package simmerpoint.sampling;

/**
 * Natural logarithm for the ray loop: exponent, a table over the first eight bits of the mantissa, and four terms of
 * ln(1 + r) with |r| &lt; 1/512. Absolute error below 1e-14 (fifth term: derived here).
 */
final class FastLog {
    private static final int BITS = 8;
    private static final double LN2 = StrictMath.log(2);
    private static final double[] INVERSE = new double[1 << BITS];
    private static final double[] LN = new double[1 << BITS];

    static {
        for (int k = 0; k < INVERSE.length; k++) {
            INVERSE[k] = 1 / (1 + (k + 0.5) / INVERSE.length);
            LN[k] = -StrictMath.log(INVERSE[k]);
        }
    }

    private FastLog() {}

    /** ln x for a normal positive x. */
    static double ln(double x) {
        long bits = Double.doubleToRawLongBits(x);
        int k = (int) (bits >>> (52 - BITS)) & ((1 << BITS) - 1);
        int exponent = (int) (bits >>> 52) - 1023;
        double mantissa = Double.longBitsToDouble((bits & 0xFFFFFFFFFFFFFL) | 0x3FF0000000000000L);
        double r = mantissa * INVERSE[k] - 1;
        return exponent * LN2 + LN[k] + r * (1 - r * (0.5 - r * (1.0 / 3 - r * (0.25 - r * 0.2))));
    }
}
