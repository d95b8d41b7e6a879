package simmerpoint.target;

import simmerpoint.sampling.FastSignedRayleigh;
import simmerpoint.tracing.LightBatch;
import simmerpoint.tracing.ReflectedDirections;

/**
 * For each ray of a batch and each of its two error lines, the probability that its mirror error brings it into the disc in
 * the target's plane. The intersection is taken to move linearly with the signed radius of the error. This only places the
 * strata: each sampled ray is intersected exactly, so nothing is biased (derived here: stratified sampling with exact
 * weights of the strata).
 */
final class DiscHitProbability {
    /** Probability of a radius below those that hit the disc; line 0, then line 1. */
    final double[] below;

    /** Probability of a radius that hits the disc; line 0, then line 1. */
    final double[] within;

    private final ReflectedDirections errorFree;
    private final ReflectedDirections derivative;
    private final double[] inverseZ;
    private final double[] rayParameter;
    private final double[] qx;
    private final double[] qy;
    private final double[] mx;
    private final double[] my;
    private final double[] inverseStep2;
    private final double[] closest;
    private final double[] root;
    private final double[] low;
    private final double[] high;
    private final double radius2;

    DiscHitProbability(int batch, double radius) {
        below = new double[2 * batch];
        within = new double[2 * batch];
        errorFree = new ReflectedDirections(batch);
        derivative = new ReflectedDirections(batch);
        inverseZ = new double[batch];
        rayParameter = new double[batch];
        qx = new double[batch];
        qy = new double[batch];
        mx = new double[batch];
        my = new double[batch];
        inverseStep2 = new double[batch];
        closest = new double[batch];
        root = new double[batch];
        low = new double[batch];
        high = new double[batch];
        radius2 = radius * radius;
    }

    /** Fills {@link #below} and {@link #within} for a batch. */
    void compute(LightBatch light) {
        int n = light.capacity;
        errorFree.reflect(light);
        for (int i = 0; i < n; i++) {
            inverseZ[i] = 1 / errorFree.dz[i];
        }
        for (int i = 0; i < n; i++) {
            rayParameter[i] = -light.pz[i] * inverseZ[i];
        }
        for (int i = 0; i < n; i++) {
            qx[i] = light.px[i] + rayParameter[i] * errorFree.dx[i];
        }
        for (int i = 0; i < n; i++) {
            qy[i] = light.py[i] + rayParameter[i] * errorFree.dy[i];
        }
        for (int line = 0; line < 2; line++) {
            findEdgeRadii(light, line);
            computeProbabilities(light, line * n);
        }
    }

    /** Signed radii at which the intersection crosses the disc's edge; NaN where it never does. */
    private void findEdgeRadii(LightBatch light, int line) {
        int n = light.capacity;
        derivative.differentiate(light, line);
        for (int i = 0; i < n; i++) {
            mx[i] = rayParameter[i] * (derivative.dx[i] - errorFree.dx[i] * derivative.dz[i] * inverseZ[i]);
        }
        for (int i = 0; i < n; i++) {
            my[i] = rayParameter[i] * (derivative.dy[i] - errorFree.dy[i] * derivative.dz[i] * inverseZ[i]);
        }
        for (int i = 0; i < n; i++) {
            inverseStep2[i] = 1 / (mx[i] * mx[i] + my[i] * my[i]);
        }
        for (int i = 0; i < n; i++) {
            closest[i] = -(qx[i] * mx[i] + qy[i] * my[i]) * inverseStep2[i];
        }
        for (int i = 0; i < n; i++) {
            double off2 = qx[i] * qx[i] + qy[i] * qy[i] - radius2;
            root[i] = Math.sqrt(closest[i] * closest[i] - off2 * inverseStep2[i]);
        }
        for (int i = 0; i < n; i++) {
            low[i] = closest[i] - root[i];
        }
        for (int i = 0; i < n; i++) {
            high[i] = closest[i] + root[i];
        }
    }

    private void computeProbabilities(LightBatch light, int offset) {
        int n = light.capacity;
        for (int i = 0; i < n; i++) {
            boolean reaches = rayParameter[i] > 0 && light.pz[i] < 0 && high[i] > low[i];
            double from = reaches ? FastSignedRayleigh.cumulative(low[i]) : 0;
            below[offset + i] = from;
            within[offset + i] = reaches ? FastSignedRayleigh.cumulative(high[i]) - from : 0;
        }
    }
}
