package simmerpoint.target;

import simmerpoint.sampling.FastSignedRayleigh;
import simmerpoint.tracing.LightBatch;
import simmerpoint.tracing.ReflectedDirections;

/**
 * For each ray of a batch, between which signed radii of its mirror error it lands in the disc of the target's plane,
 * along both of its error lines, and how likely that is. The landing point is taken to move straight and evenly with the
 * radius; whoever draws a radius afterwards judges the exact ray, so this only steers where rays are drawn and never
 * biases what is counted (derived here: stratified sampling with exact weights of the strata).
 */
final class DiscHitProbability {
    /** Share of the law below the disc, two lines one after the other. */
    final double[] below;

    /** Share of the law within the disc, two lines one after the other. */
    final double[] within;

    private final ReflectedDirections middle;
    private final ReflectedDirections slope;
    private final double[] perZ;
    private final double[] reach;
    private final double[] qx;
    private final double[] qy;
    private final double[] mx;
    private final double[] my;
    private final double[] perStep2;
    private final double[] nearest;
    private final double[] root;
    private final double[] low;
    private final double[] high;
    private final double radius2;

    DiscHitProbability(int batch, double radius) {
        below = new double[2 * batch];
        within = new double[2 * batch];
        middle = new ReflectedDirections(batch);
        slope = new ReflectedDirections(batch);
        perZ = new double[batch];
        reach = new double[batch];
        qx = new double[batch];
        qy = new double[batch];
        mx = new double[batch];
        my = new double[batch];
        perStep2 = new double[batch];
        nearest = new double[batch];
        root = new double[batch];
        low = new double[batch];
        high = new double[batch];
        radius2 = radius * radius;
    }

    /** Judges a batch. */
    void judge(LightBatch light) {
        int n = light.capacity;
        middle.reflect(light);
        for (int i = 0; i < n; i++) {
            perZ[i] = 1 / middle.dz[i];
        }
        for (int i = 0; i < n; i++) {
            reach[i] = -light.pz[i] * perZ[i];
        }
        for (int i = 0; i < n; i++) {
            qx[i] = light.px[i] + reach[i] * middle.dx[i];
        }
        for (int i = 0; i < n; i++) {
            qy[i] = light.py[i] + reach[i] * middle.dy[i];
        }
        for (int line = 0; line < 2; line++) {
            cross(light, line);
            weigh(light, line * n);
        }
    }

    /** Radii at which the landing point crosses the disc's edge; not a number where it never does. */
    private void cross(LightBatch light, int line) {
        int n = light.capacity;
        slope.slope(light, line);
        for (int i = 0; i < n; i++) {
            mx[i] = reach[i] * (slope.dx[i] - middle.dx[i] * slope.dz[i] * perZ[i]);
        }
        for (int i = 0; i < n; i++) {
            my[i] = reach[i] * (slope.dy[i] - middle.dy[i] * slope.dz[i] * perZ[i]);
        }
        for (int i = 0; i < n; i++) {
            perStep2[i] = 1 / (mx[i] * mx[i] + my[i] * my[i]);
        }
        for (int i = 0; i < n; i++) {
            nearest[i] = -(qx[i] * mx[i] + qy[i] * my[i]) * perStep2[i];
        }
        for (int i = 0; i < n; i++) {
            double off2 = qx[i] * qx[i] + qy[i] * qy[i] - radius2;
            root[i] = Math.sqrt(nearest[i] * nearest[i] - off2 * perStep2[i]);
        }
        for (int i = 0; i < n; i++) {
            low[i] = nearest[i] - root[i];
        }
        for (int i = 0; i < n; i++) {
            high[i] = nearest[i] + root[i];
        }
    }

    private void weigh(LightBatch light, int offset) {
        int n = light.capacity;
        for (int i = 0; i < n; i++) {
            boolean may = reach[i] > 0 && light.pz[i] < 0 && high[i] > low[i];
            double from = may ? FastSignedRayleigh.cumulative(low[i]) : 0;
            below[offset + i] = from;
            within[offset + i] = may ? FastSignedRayleigh.cumulative(high[i]) - from : 0;
        }
    }
}
