package simmerpoint.target;

import simmerpoint.sampling.RadiusLaw;
import simmerpoint.tracing.ErrorLine;
import simmerpoint.tracing.LightBatch;

/**
 * For each ray of a batch, between which signed radii of its mirror error it lands in the disc of the target's plane,
 * along both of its error lines, and how likely that is. The landing point is taken to move straight and evenly with the
 * radius; whoever draws a radius afterwards judges the exact ray, so this only steers where rays are drawn and never
 * biases what is counted (derived here: stratified sampling with exact strata weights).
 */
final class DiscShare {
    /** Share of the law below the disc, and within it, along the first line. */
    final double[] belowA;

    final double[] withinA;
    /** The same along the second line. */
    final double[] belowB;

    final double[] withinB;
    private final double[] low;
    private final double[] high;
    private final double radius2;

    DiscShare(int batch, double radius) {
        belowA = new double[batch];
        withinA = new double[batch];
        belowB = new double[batch];
        withinB = new double[batch];
        low = new double[batch];
        high = new double[batch];
        radius2 = radius * radius;
    }

    /** Judges a batch. */
    void judge(LightBatch light) {
        along(light, light.a, belowA, withinA);
        along(light, light.b, belowB, withinB);
    }

    private void along(LightBatch light, ErrorLine line, double[] below, double[] within) {
        int n = light.size;
        for (int i = 0; i < n; i++) {
            double perZ = 1 / light.rz[i];
            double t = -light.pz[i] * perZ;
            double qx = light.px[i] + t * light.rx[i];
            double qy = light.py[i] + t * light.ry[i];
            double slant = line.z1[i] * perZ;
            double mx = t * (line.x1[i] - light.rx[i] * slant);
            double my = t * (line.y1[i] - light.ry[i] * slant);
            double a = mx * mx + my * my;
            double b = qx * mx + qy * my;
            double root = Math.sqrt(b * b - a * (qx * qx + qy * qy - radius2));
            low[i] = (-b - root) / a;
            high[i] = (root - b) / a;
        }
        for (int i = 0; i < n; i++) {
            boolean may = light.rz[i] > 0 && light.pz[i] < 0 && high[i] > low[i];
            below[i] = may ? RadiusLaw.cumulative(low[i]) : 0;
            within[i] = may ? RadiusLaw.cumulative(high[i]) - below[i] : 0;
        }
    }
}
