package simmerpoint.sampling;

/**
 * Functions of whole arrays for the ray loop, in single precision. A loop writes one array and has neither a branch nor a
 * table, so that the compiler of Java 17 makes it sixteen rays wide (measured: a tenth of the time of loops with tables). A
 * choice is a factor of 0 or 1, and there is no {@code Math.min} and {@code max}: whether they vectorise depends on what else
 * has called them before (the compiler looks at their branches).
 */
public final class ArrayFunctions {
    private static final float LEAST = 1e-30f;
    private static final float PI = (float) Math.PI;
    private static final float HALF_PI = (float) (Math.PI / 2);
    private static final float ROOT_HALF = (float) Math.sqrt(0.5);

    private ArrayFunctions() {}

    /** 1 above 0, 0 at 0 and −1 below; for differences, which are 0 or larger than 1e-20. */
    public static float sign(float x) {
        return x / (Math.abs(x) + LEAST);
    }

    /** 1 where {@code x} is above 0, else 0; for differences. */
    public static float above0(float x) {
        return positivePart(sign(x));
    }

    /** 0 where {@code x} is below 0, else 1; for differences. */
    public static float notBelow0(float x) {
        return 1 - positivePart(-sign(x));
    }

    /** {@code x} where it is above 0, else 0. */
    public static float positivePart(float x) {
        return 0.5f * (x + Math.abs(x));
    }

    /** The larger of two numbers, but for rounding. */
    public static float larger(float a, float b) {
        return 0.5f * (a + b + Math.abs(a - b));
    }

    /**
     * Cosine and sine of 2πu for u from 0 to 1, to 1e-6: of half the angle by their series on ±π/2, then doubled.
     *
     * @param scratch room for n numbers
     */
    public static void fullCircle(float[] u, int n, float[] cos, float[] sin, float[] scratch) {
        for (int i = 0; i < n; i++) {
            scratch[i] = sine(PI * (u[i] - 0.5f));
        }
        for (int i = 0; i < n; i++) {
            sin[i] = -2 * scratch[i] * cosine(PI * (u[i] - 0.5f));
        }
        for (int i = 0; i < n; i++) {
            cos[i] = 2 * scratch[i] * scratch[i] - 1;
        }
    }

    /**
     * Cosine and sine of πu/2 for u from 0 to 1, to 3e-7: by their series on ±π/4, turned by π/4.
     *
     * @param u overwritten
     * @param scratch room for n numbers
     */
    public static void quarterCircle(float[] u, int n, float[] cos, float[] sin, float[] scratch) {
        for (int i = 0; i < n; i++) {
            scratch[i] = ROOT_HALF * cosine(HALF_PI * (u[i] - 0.5f));
        }
        for (int i = 0; i < n; i++) {
            u[i] = ROOT_HALF * sine(HALF_PI * (u[i] - 0.5f));
        }
        for (int i = 0; i < n; i++) {
            cos[i] = scratch[i] - u[i];
        }
        for (int i = 0; i < n; i++) {
            sin[i] = scratch[i] + u[i];
        }
    }

    /** Taylor's series; what is left out is below 6e-8 on ±π/2. */
    private static float sine(float t) {
        float q = t * t;
        return t * (1 - q * (1f / 6 - q * (1f / 120 - q * (1f / 5040 - q * (1f / 362_880 - q * (1f / 39_916_800))))));
    }

    private static float cosine(float t) {
        float q = t * t;
        float last = 1f / 40_320 - q * (1f / 3_628_800 - q * (1f / 479_001_600));
        return 1 - q * (0.5f - q * (1f / 24 - q * (1f / 720 - q * last)));
    }
}
