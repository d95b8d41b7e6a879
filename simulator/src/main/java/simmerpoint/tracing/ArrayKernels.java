package simmerpoint.tracing;

/**
 * Sums of products over whole arrays. Each loop writes one array: the compiler of Java 17 vectorises such loops, but not
 * loops with several results (measured: a third of the time).
 */
final class ArrayKernels {
    private ArrayKernels() {}

    /** out = a·x + b·y + c·z + d with constants a to d. */
    static void combine(
            double[] out, int n, double a, double[] x, double b, double[] y, double c, double[] z, double d) {
        for (int i = 0; i < n; i++) {
            out[i] = a * x[i] + b * y[i] + c * z[i] + d;
        }
    }

    /** out = a·x + b·y + c·z, all of them arrays. */
    static void dot(double[] out, int n, double[] a, double[] x, double[] b, double[] y, double[] c, double[] z) {
        for (int i = 0; i < n; i++) {
            out[i] = a[i] * x[i] + b[i] * y[i] + c[i] * z[i];
        }
    }

    /** out = a·x − b·y. */
    static void difference(double[] out, int n, double[] a, double[] x, double[] b, double[] y) {
        for (int i = 0; i < n; i++) {
            out[i] = a[i] * x[i] - b[i] * y[i];
        }
    }

    /** out = k·a·x. */
    static void product(double[] out, int n, double k, double[] a, double[] x) {
        for (int i = 0; i < n; i++) {
            out[i] = k * a[i] * x[i];
        }
    }

    /** out = 1/√(x² + y² + z² + least). */
    static void inverseLength(double[] out, int n, double[] x, double[] y, double[] z, double least) {
        for (int i = 0; i < n; i++) {
            out[i] = 1 / Math.sqrt(x[i] * x[i] + y[i] * y[i] + z[i] * z[i] + least);
        }
    }
}
