package simmerpoint.target;

import simmerpoint.pan.GrazingAbsorptance;
import simmerpoint.sampling.FastSignedRayleigh;
import simmerpoint.tracing.LightBatch;
import simmerpoint.tracing.ReflectedDirections;

/** Where the rays of a batch, each with one sampled error, cross the target's plane. Not thread-safe. */
final class PlaneIntersections {
    final ReflectedDirections directions;
    /** Quantile of the sampled error's signed radius: set by the caller, overwritten by {@link #compute}. */
    final double[] quantile;
    /** Index of the sampled error's line in {@link LightBatch#tiltInPlane}: set by the caller. */
    final int[] entry;
    /** Where the line of the ray crosses the plane z = 0, m. */
    final double[] x;

    final double[] y;
    /** Distance of that point from the target's centre, m. */
    final double[] radius;
    /** 1 ÷ length of the direction: the formulas of the batch give 1 + tilt². */
    final double[] inverseLength;
    /** Relative absorptance of the plane at the ray's angle, see {@link GrazingAbsorptance}. */
    final double[] absorptance;
    /** Distance from the mirror in lengths of the direction; above 0 if the ray reaches the plane. */
    final double[] rayParameter;
    /** Watts of this sample per watt of the ray. */
    final double[] weight;

    PlaneIntersections(int batch) {
        directions = new ReflectedDirections(batch);
        quantile = new double[batch];
        entry = new int[batch];
        x = new double[batch];
        y = new double[batch];
        radius = new double[batch];
        inverseLength = new double[batch];
        absorptance = new double[batch];
        rayParameter = new double[batch];
        weight = new double[batch];
    }

    /** Tilts of the sampled errors, from {@link #quantile} and {@link #entry}. */
    private void computeTilts(LightBatch light) {
        int n = light.capacity;
        FastSignedRayleigh.inverse(quantile, n, radius);
        for (int i = 0; i < n; i++) {
            directions.tiltInPlane[i] = quantile[i] * light.tiltInPlane[entry[i]];
        }
        for (int i = 0; i < n; i++) {
            directions.tiltAcross[i] = quantile[i] * light.tiltAcross[entry[i]];
        }
    }

    /** Intersects all rays with the plane, each with its sampled error or, if {@code errorFree}, with none. */
    void compute(LightBatch light, boolean errorFree) {
        int n = light.capacity;
        if (!errorFree) {
            computeTilts(light);
        }
        directions.reflect(light);
        for (int i = 0; i < n; i++) {
            rayParameter[i] = -light.pz[i] / directions.dz[i];
        }
        for (int i = 0; i < n; i++) {
            x[i] = light.px[i] + rayParameter[i] * directions.dx[i];
        }
        for (int i = 0; i < n; i++) {
            y[i] = light.py[i] + rayParameter[i] * directions.dy[i];
        }
        for (int i = 0; i < n; i++) {
            radius[i] = Math.sqrt(x[i] * x[i] + y[i] * y[i]);
        }
        for (int i = 0; i < n; i++) {
            double in = directions.tiltInPlane[i];
            double across = directions.tiltAcross[i];
            inverseLength[i] = 1 / (1 + in * in + across * across);
        }
        for (int i = 0; i < n; i++) {
            absorptance[i] = directions.dz[i] * inverseLength[i];
        }
        GrazingAbsorptance.fill(absorptance, n, absorptance);
    }
}
