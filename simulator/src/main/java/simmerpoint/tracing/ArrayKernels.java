package simmerpoint.tracing;

/**
 * Sums of products over whole arrays. Each loop writes one array: the compiler of Java 17 vectorises such loops, but not
 * loops with several results (measured: a third of the time), nor those with more than six arrays (measured: two loops of five
 * arrays take a quarter of the time of one of eight).
 */
public final class ArrayKernels {
    private ArrayKernels() {}

    /** out = m·(x, y, z) + o for row {@code row} (0 to 2) of the matrix with rows {@code m}. */
    static void row(float[] out, int n, double[] m, int row, float[] x, float[] y, float[] z, double o) {
        float a = (float) m[3 * row];
        float b = (float) m[3 * row + 1];
        float c = (float) m[3 * row + 2];
        float d = (float) o;
        for (int i = 0; i < n; i++) {
            out[i] = a * x[i] + b * y[i] + c * z[i] + d;
        }
    }

    /** out = a·x + b·y + c·z, all of them arrays, first to last. */
    public static void dot(float[] out, int n, float[] a, float[] x, float[] b, float[] y, float[] c, float[] z) {
        for (int i = 0; i < n; i++) {
            out[i] = a[i] * x[i] + b[i] * y[i];
        }
        for (int i = 0; i < n; i++) {
            out[i] += c[i] * z[i];
        }
    }

    /** out = a·x − b·y. */
    static void difference(float[] out, int n, float[] a, float[] x, float[] b, float[] y) {
        for (int i = 0; i < n; i++) {
            out[i] = a[i] * x[i] - b[i] * y[i];
        }
    }

    /** out = a·x. */
    static void product(float[] out, int n, float[] a, float[] x) {
        for (int i = 0; i < n; i++) {
            out[i] = a[i] * x[i];
        }
    }

    /** The nearest numbers of single precision. */
    static void round(double[] x, int n, float[] out) {
        for (int i = 0; i < n; i++) {
            out[i] = (float) x[i];
        }
    }
}
