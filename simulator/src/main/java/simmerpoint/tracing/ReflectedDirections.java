package simmerpoint.tracing;

/** Directions of the reflected rays of a batch for given tilts of the normals. Not thread-safe. */
public final class ReflectedDirections {
    /** Tilt in the plane of incidence, rad: set by the caller. */
    public final double[] tiltInPlane;
    /** Tilt across it, rad: set by the caller. */
    public final double[] tiltAcross;
    /** Direction, of any length. */
    public final double[] dx;
    /** Direction. */
    public final double[] dy;
    /** Direction. */
    public final double[] dz;

    private final double[] a;
    private final double[] b;
    private final double[] c;

    /** For batches of {@code n} rays; all tilts are 0. */
    public ReflectedDirections(int n) {
        tiltInPlane = new double[n];
        tiltAcross = new double[n];
        dx = new double[n];
        dy = new double[n];
        dz = new double[n];
        a = new double[n];
        b = new double[n];
        c = new double[n];
    }

    /** Reflects each ray of the batch at its tilted normal; the formulas are those of {@link LightBatch}. */
    public void reflect(LightBatch light) {
        int n = light.capacity;
        double[] cosine = light.cosine;
        double[] inverseSine = light.inverseSine;
        for (int i = 0; i < n; i++) {
            double t = tiltInPlane[i];
            a[i] = 2 * (cosine[i] + t * ((1 - 2 * cosine[i] * cosine[i]) * inverseSine[i] - t * cosine[i]));
        }
        for (int i = 0; i < n; i++) {
            double t = tiltInPlane[i];
            b[i] = t * (2 * cosine[i] * inverseSine[i] + t) - tiltAcross[i] * tiltAcross[i] - 1;
        }
        for (int i = 0; i < n; i++) {
            c[i] = 2 * tiltAcross[i] * (cosine[i] * inverseSine[i] + tiltInPlane[i]);
        }
        ArrayKernels.dot(dx, n, a, light.nx, b, light.sx, c, light.cx);
        ArrayKernels.dot(dy, n, a, light.ny, b, light.sy, c, light.cy);
        ArrayKernels.dot(dz, n, a, light.nz, b, light.sz, c, light.cz);
    }

    /** Derivative of the direction with respect to the radius along error line {@code line} (0 or 1), at radius 0. */
    public void differentiate(LightBatch light, int line) {
        int n = light.capacity;
        int from = line * n;
        double[] cosine = light.cosine;
        System.arraycopy(light.tiltInPlane, from, tiltInPlane, 0, n);
        System.arraycopy(light.tiltAcross, from, tiltAcross, 0, n);
        for (int i = 0; i < n; i++) {
            a[i] = 2 * tiltInPlane[i] * (1 - 2 * cosine[i] * cosine[i]) * light.inverseSine[i];
        }
        for (int i = 0; i < n; i++) {
            b[i] = 2 * tiltInPlane[i] * cosine[i] * light.inverseSine[i];
        }
        for (int i = 0; i < n; i++) {
            c[i] = 2 * tiltAcross[i] * cosine[i] * light.inverseSine[i];
        }
        ArrayKernels.dot(dx, n, a, light.nx, b, light.sx, c, light.cx);
        ArrayKernels.dot(dy, n, a, light.ny, b, light.sy, c, light.cy);
        ArrayKernels.dot(dz, n, a, light.nz, b, light.sz, c, light.cz);
    }
}
