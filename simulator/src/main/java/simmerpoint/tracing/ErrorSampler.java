package simmerpoint.tracing;

import simmerpoint.sampling.FastSignedRayleigh;

/** Samples one mirror error for each ray of a batch and reflects the ray. Not thread-safe. */
public final class ErrorSampler {
    private final ReflectedDirections directions;
    private final int[] line;
    private final double[] radius;
    private final double[] scratch;

    /** For batches of {@code n} rays. */
    public ErrorSampler(int n) {
        directions = new ReflectedDirections(n);
        line = new int[n];
        radius = new double[n];
        scratch = new double[n];
    }

    /** Reflected directions of a batch; the same object is filled every time. */
    public ReflectedDirections sample(LightBatch light) {
        int n = light.capacity;
        for (int i = 0; i < n; i++) {
            double v = 2 * light.errorSample[i];
            line[i] = (int) v;
            radius[i] = v - line[i];
        }
        FastSignedRayleigh.inverse(radius, n, scratch);
        for (int i = 0; i < n; i++) {
            directions.tiltInPlane[i] = radius[i] * light.tiltInPlane[i + line[i] * n];
            directions.tiltAcross[i] = radius[i] * light.tiltAcross[i + line[i] * n];
        }
        directions.reflect(light);
        return directions;
    }
}
