package simmerpoint.tracing;

/**
 * Directions of the reflected rays of a batch for given tilts of the normals. With m = n + ρT, T square to the unit normal n,
 * the law of reflection 2(m·s)m − |m|²s divided by |m|² = 1 + ρ²T² (derived here) is
 *
 * <pre>d = h·m − s,  h = 2(cos i + ρ T·s)/(1 + ρ²T²),</pre>
 *
 * a unit vector, exact for every tilt. Not thread-safe.
 */
public final class ReflectedDirections {
    /** T: set by the caller. */
    public final float[] tiltX;
    /** T. */
    public final float[] tiltY;
    /** T. */
    public final float[] tiltZ;
    /** Signed radius ρ: set by the caller. */
    public final float[] radius;
    /** Direction, unit. */
    public final float[] dx;
    /** Direction. */
    public final float[] dy;
    /** Direction. */
    public final float[] dz;

    private final float[] scale;
    private final float[] square;

    /** For batches of {@code n} rays; all tilts are 0. */
    public ReflectedDirections(int n) {
        tiltX = new float[n];
        tiltY = new float[n];
        tiltZ = new float[n];
        radius = new float[n];
        dx = new float[n];
        dy = new float[n];
        dz = new float[n];
        scale = new float[n];
        square = new float[n];
    }

    /** Takes each ray's tilt from one of its two error lines; {@code line} is 0 or 1. */
    public void selectLines(LightBatch light, float[] line) {
        LightBatch.Tilts first = light.tilts[0];
        LightBatch.Tilts second = light.tilts[1];
        selectLines(first.x(), second.x(), line, light.capacity, tiltX);
        selectLines(first.y(), second.y(), line, light.capacity, tiltY);
        selectLines(first.z(), second.z(), line, light.capacity, tiltZ);
    }

    private static void selectLines(float[] first, float[] second, float[] line, int n, float[] out) {
        for (int i = 0; i < n; i++) {
            out[i] = (1 - line[i]) * first[i] + line[i] * second[i];
        }
    }

    /** The same for the first {@code n} rays listed. */
    public void selectLines(LightBatch light, float[] line, int[] list, int n) {
        for (int k = 0; k < n; k++) {
            LightBatch.Tilts tilts = light.tilts[(int) line[k]];
            tiltX[k] = tilts.x()[list[k]];
            tiltY[k] = tilts.y()[list[k]];
            tiltZ[k] = tilts.z()[list[k]];
        }
    }

    /** Reflects the first {@code n} rays of the batch, each at its tilted normal. */
    public void reflect(LightBatch light, int n) {
        ArrayKernels.dot(scale, n, tiltX, light.sx, tiltY, light.sy, tiltZ, light.sz);
        for (int i = 0; i < n; i++) {
            scale[i] = 2 * (light.cosine[i] + radius[i] * scale[i]);
        }
        for (int i = 0; i < n; i++) {
            square[i] = tiltX[i] * tiltX[i] + tiltY[i] * tiltY[i] + tiltZ[i] * tiltZ[i];
        }
        for (int i = 0; i < n; i++) {
            scale[i] /= 1 + radius[i] * radius[i] * square[i];
        }
        reflect(light.nx, tiltX, light.sx, n, dx);
        reflect(light.ny, tiltY, light.sy, n, dy);
        reflect(light.nz, tiltZ, light.sz, n, dz);
    }

    /** One component of h·m − s. */
    private void reflect(float[] normal, float[] tilt, float[] sun, int n, float[] out) {
        for (int i = 0; i < n; i++) {
            out[i] = scale[i] * (normal[i] + radius[i] * tilt[i]) - sun[i];
        }
    }
}
