package simmerpoint.tracing;

import simmerpoint.sampling.FastSignedRayleigh;

/** One error for each ray of a batch, drawn from all of its law, and where the ray then goes; owned by one thread. */
public final class ErrorSampler {
    private final ReflectedDirections out;
    private final int[] line;
    private final double[] rho;
    private final double[] scratch;

    /** Room for {@code n} rays. */
    public ErrorSampler(int n) {
        out = new ReflectedDirections(n);
        line = new int[n];
        rho = new double[n];
        scratch = new double[n];
    }

    /** Where the rays of a batch go; the same object is filled anew every time. */
    public ReflectedDirections of(LightBatch light) {
        int n = light.capacity;
        for (int i = 0; i < n; i++) {
            double v = 2 * light.draw[i];
            line[i] = (int) v;
            rho[i] = v - line[i];
        }
        FastSignedRayleigh.inverse(rho, n, scratch);
        for (int i = 0; i < n; i++) {
            out.tiltIn[i] = rho[i] * light.tiltIn[i + line[i] * n];
            out.tiltAcross[i] = rho[i] * light.tiltAcross[i + line[i] * n];
        }
        out.reflect(light);
        return out;
    }
}
