package simmerpoint.target;

import simmerpoint.tracing.LightBatch;
import simmerpoint.tracing.ReflectedRays;

/**
 * What every panel has sent and landed so far, summed over rays: watts as if each ray were the whole sample, to be
 * divided by the number of rays. For one thread.
 */
public final class PanelTally {
    private final double[] incident;
    private final double[] reflected;
    private final double[] caught;
    private final int[] rays;

    /** Nothing yet, for so many panels. */
    public PanelTally(int panels) {
        incident = new double[panels];
        reflected = new double[panels];
        caught = new double[panels];
        rays = new int[panels];
    }

    /** Adds sunlight on the mirrors and {@code share} of {@code lit} ray by ray, which is 0 where the target shades. */
    void countMirrors(ReflectedRays batch, float[] lit, double share) {
        for (int i = 0; i < batch.count(); i++) {
            int k = batch.panel(i);
            incident[k] += batch.watts(i);
            reflected[k] += lit[i] * share;
            rays[k] += lit[i] > 0 ? 1 : 0;
        }
    }

    /** Adds {@code share} of {@code landed} ray by ray, which is 0 where light went past. */
    void countCaught(ReflectedRays batch, float[] landed, double share) {
        for (int i = 0; i < batch.count(); i++) {
            caught[batch.panel(i)] += landed[i] * share;
        }
    }

    /** Adds a batch of sunlight: what of it left the mirrors and what of that landed, ray by ray. */
    void count(LightBatch batch, double[] lit, double[] landed) {
        for (int i = 0; i < batch.capacity; i++) {
            int k = batch.panel[i];
            if (k >= 0) {
                incident[k] += batch.watts[i];
                reflected[k] += lit[i];
                caught[k] += landed[i];
                rays[k] += lit[i] > 0 ? 1 : 0;
            }
        }
    }

    /** Adds what {@code other} has counted. */
    public void add(PanelTally other) {
        for (int k = 0; k < rays.length; k++) {
            incident[k] += other.incident[k];
            reflected[k] += other.reflected[k];
            caught[k] += other.caught[k];
            rays[k] += other.rays[k];
        }
    }

    /** Number of panels. */
    public int panels() {
        return rays.length;
    }

    /** Sunlight towards panel {@code k}. */
    public double incident(int k) {
        return incident[k];
    }

    /** What left it as a beam. */
    public double reflected(int k) {
        return reflected[k];
    }

    /** What of that the target caught. */
    public double caught(int k) {
        return caught[k];
    }

    /** Rays that left it. */
    public int rays(int k) {
        return rays[k];
    }
}
