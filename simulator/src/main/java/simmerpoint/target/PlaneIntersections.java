package simmerpoint.target;

import simmerpoint.sampling.FastSignedRayleigh;
import simmerpoint.tracing.LightBatch;
import simmerpoint.tracing.ReflectedDirections;

/** Where the rays of a batch, each with one drawn error, cross the target's plane; owned by one thread. */
final class PlaneIntersections {
    final ReflectedDirections out;
    /** Share of the radius law below the drawn error: set by the caller, used up by {@link #land}. */
    final double[] share;
    /** Where the entries of the drawn error's line stand in the batch: set by the caller. */
    final int[] at;
    /** Where the line of the ray crosses the plane z = 0. */
    final double[] x;

    final double[] y;
    /** Distance of that place from the target's middle. */
    final double[] radius;
    /** 1 ÷ length of the direction: the formulas of the batch give 1 + tilt². */
    final double[] perLength;
    /** Lengths of the direction from the mirror to there; above 0 if the ray gets there. */
    final double[] reach;
    /** Watts this landing carries, per watt of the ray. */
    final double[] weight;

    PlaneIntersections(int batch) {
        out = new ReflectedDirections(batch);
        share = new double[batch];
        at = new int[batch];
        x = new double[batch];
        y = new double[batch];
        radius = new double[batch];
        perLength = new double[batch];
        reach = new double[batch];
        weight = new double[batch];
    }

    /**
     * Gives every ray the error whose radius has the share {@link #share} of its law below it, along the line whose
     * entries stand at {@link #at}.
     */
    private void tilt(LightBatch light) {
        int n = light.capacity;
        FastSignedRayleigh.inverse(share, n, radius);
        for (int i = 0; i < n; i++) {
            out.tiltIn[i] = share[i] * light.tiltIn[at[i]];
        }
        for (int i = 0; i < n; i++) {
            out.tiltAcross[i] = share[i] * light.tiltAcross[at[i]];
        }
    }

    /** Carries all rays to the plane, each with its drawn error or, if {@code sharp}, with none. */
    void land(LightBatch light, boolean sharp) {
        int n = light.capacity;
        if (!sharp) {
            tilt(light);
        }
        out.reflect(light);
        for (int i = 0; i < n; i++) {
            reach[i] = -light.pz[i] / out.dz[i];
        }
        for (int i = 0; i < n; i++) {
            x[i] = light.px[i] + reach[i] * out.dx[i];
        }
        for (int i = 0; i < n; i++) {
            y[i] = light.py[i] + reach[i] * out.dy[i];
        }
        for (int i = 0; i < n; i++) {
            radius[i] = Math.sqrt(x[i] * x[i] + y[i] * y[i]);
        }
        for (int i = 0; i < n; i++) {
            perLength[i] = 1 / (1 + out.tiltIn[i] * out.tiltIn[i] + out.tiltAcross[i] * out.tiltAcross[i]);
        }
    }
}
