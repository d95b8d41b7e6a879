package simmerpoint.target;

import simmerpoint.tracing.LightBatch;
import simmerpoint.tracing.Outgoing;

/** Where the rays of a batch, each with one drawn error, cross the target's plane; owned by one thread. */
final class Landing {
    final Outgoing out;
    /** Where the line of the ray crosses the plane z = 0. */
    final double[] x;

    final double[] y;
    /** Distance of that place from the target's middle. */
    final double[] radius;
    /** Lengths of the direction from the mirror to there; above 0 if the ray gets there. */
    final double[] reach;
    /** Watts this landing carries, per watt of the ray. */
    final double[] weight;

    Landing(int batch) {
        out = new Outgoing(batch);
        x = new double[batch];
        y = new double[batch];
        radius = new double[batch];
        reach = new double[batch];
        weight = new double[batch];
    }

    /** Gives ray {@code i} the error of signed radius {@code rho} along the line whose entries stand at {@code at}. */
    void set(LightBatch light, int i, int at, double rho) {
        out.tiltIn[i] = rho * light.tiltIn[at];
        out.tiltAcross[i] = rho * light.tiltAcross[at];
    }

    /** Carries all rays to the plane. */
    void land(LightBatch light) {
        int n = light.capacity;
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
    }
}
