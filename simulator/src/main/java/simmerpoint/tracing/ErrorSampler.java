package simmerpoint.tracing;

import simmerpoint.sampling.ArrayFunctions;
import simmerpoint.sampling.FastSignedRayleigh;

/** Samples one mirror error for each ray of a batch and reflects the ray. Not thread-safe. */
public final class ErrorSampler {
    private final ReflectedDirections directions;
    private final float[] line;
    private final float[] scratch;

    /** For batches of {@code n} rays. */
    public ErrorSampler(int n) {
        directions = new ReflectedDirections(n);
        line = new float[n];
        scratch = new float[n];
    }

    /** Reflected directions of a batch; the same object is filled every time. */
    public ReflectedDirections sample(LightBatch light) {
        int n = light.capacity;
        float[] sample = light.errorSample;
        float[] radius = directions.radius;
        for (int i = 0; i < n; i++) {
            line[i] = ArrayFunctions.notBelow0(sample[i] - 0.5f);
        }
        for (int i = 0; i < n; i++) {
            radius[i] = 2 * sample[i] - line[i];
        }
        FastSignedRayleigh.inverse(radius, n, scratch);
        directions.selectLines(light, line);
        directions.reflect(light, n);
        return directions;
    }
}
