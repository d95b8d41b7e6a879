package simmerpoint.dish.shape;

import java.util.Arrays;

/**
 * A rib bent step by step: straight pieces that keep their length and turn, clamped at the axis, of equal stiffness, with moments taken
 * force by force. Independent of the closed forms under test.
 */
public final class RibChain {
    private static final int STEPS = 6000;

    /** Small enough for moments to be those of the rib as planned. */
    private static final double LITTLE = 1e-6;

    private final double[] x = new double[STEPS + 1];
    private final double[] z = new double[STEPS + 1];

    private RibChain() {}

    /** On the parabola from the axis to the rim, lengths in m. */
    public static RibChain straight(double rim, double focal) {
        RibChain plan = new RibChain();
        for (int i = 0; i <= STEPS; i++) {
            plan.x[i] = rim * i / STEPS;
            plan.z[i] = plan.x[i] * plan.x[i] / (4 * focal);
        }
        return plan;
    }

    /** Pulled at its tip towards the axis until that stands nearer to it by so much, m. */
    public RibChain pulledIn(double metres) {
        double[] in = new double[STEPS + 1];
        in[STEPS] = -1;
        double[] turn = bent(in, new double[STEPS + 1]);
        return turned(turn, LITTLE * metres / (tip() - turned(turn, LITTLE).tip()));
    }

    /**
     * Hanging under a weight that grows with the distance from the axis.
     *
     * @param metres how far its tip hangs down with the dish on its back
     * @param elevation of the axis, rad
     * @param angle of the rib from the upper edge, rad
     */
    public RibChain hanging(double metres, double elevation, double angle) {
        double sinks = z[STEPS] - weighed(Math.PI / 2, 0, LITTLE).heightAt(tip());
        return weighed(elevation, angle, LITTLE * metres / sinks);
    }

    private RibChain weighed(double elevation, double angle, double factor) {
        double[] fx = new double[STEPS + 1];
        double[] fz = new double[STEPS + 1];
        for (int i = 0; i <= STEPS; i++) {
            fx[i] = -Math.cos(elevation) * Math.cos(angle) * x[i] / STEPS;
            fz[i] = -Math.sin(elevation) * x[i] / STEPS;
        }
        return turned(bent(fx, fz), factor);
    }

    /** The same, each piece turned by so many times its turn, rad, and laid on the end of the one before. */
    private RibChain turned(double[] turn, double factor) {
        RibChain out = new RibChain();
        for (int i = 0; i < STEPS; i++) {
            double dx = x[i + 1] - x[i];
            double dz = z[i + 1] - z[i];
            double by = factor * turn[i];
            out.x[i + 1] = out.x[i] + dx * Math.cos(by) - dz * Math.sin(by);
            out.z[i + 1] = out.z[i] + dx * Math.sin(by) + dz * Math.cos(by);
        }
        return out;
    }

    /** Turns of a bar of stiffness 1 under forces at its joints. */
    private double[] bent(double[] forceX, double[] forceZ) {
        double[] moment = new double[STEPS + 1];
        double fx = 0;
        double fz = 0;
        for (int i = STEPS - 1; i >= 0; i--) {
            fx += forceX[i + 1];
            fz += forceZ[i + 1];
            moment[i] = moment[i + 1] + fz * (x[i + 1] - x[i]) - fx * (z[i + 1] - z[i]);
        }
        double[] turn = new double[STEPS];
        double all = 0;
        for (int i = 0; i < STEPS; i++) {
            all += 0.5 * (moment[i] + moment[i + 1]) * (x[i + 1] - x[i]);
            turn[i] = all;
        }
        return turn;
    }

    /** Distance of its end from the axis, m. */
    public double tip() {
        return x[STEPS];
    }

    /** Its height at a distance from the axis, beyond its end that of its last piece, m. */
    public double heightAt(double r) {
        int found = Arrays.binarySearch(x, r);
        int i = Math.min(STEPS - 1, found >= 0 ? found : Math.max(0, -found - 2));
        return z[i] + (z[i + 1] - z[i]) * (r - x[i]) / (x[i + 1] - x[i]);
    }
}
