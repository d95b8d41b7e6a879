package simmerpoint.target;

import simmerpoint.tracing.LightBatch;
import simmerpoint.tracing.ReflectedRays;

/**
 * Incident, reflected and caught light by panel, summed over rays: watts as if each ray were the whole sample, to be
 * divided by the number of rays. Not thread-safe.
 */
public final class PanelTally {
    private final double[] incident;
    private final double[] reflected;
    private final double[] caught;
    private final int[] rays;

    /** All zero, for so many panels. */
    public PanelTally(int panels) {
        incident = new double[panels];
        reflected = new double[panels];
        caught = new double[panels];
        rays = new int[panels];
    }

    /**
     * Adds incident and reflected light of a batch.
     *
     * @param unshadedWatts sunlight by ray, 0 where the target shades the mirror point
     * @param share of it that is reflected
     */
    void addMirrors(ReflectedRays batch, float[] unshadedWatts, double share) {
        for (int i = 0; i < batch.count(); i++) {
            int k = batch.panel(i);
            incident[k] += batch.watts(i);
            reflected[k] += unshadedWatts[i] * share;
            rays[k] += unshadedWatts[i] > 0 ? 1 : 0;
        }
    }

    /** Adds {@code share} of the caught light of a batch; {@code caughtWatts} is 0 for rays that missed. */
    void addCaught(ReflectedRays batch, float[] caughtWatts, double share) {
        for (int i = 0; i < batch.count(); i++) {
            caught[batch.panel(i)] += caughtWatts[i] * share;
        }
    }

    /** Adds incident light of a batch, and {@code share} of what is not shaded and of what is caught. */
    void add(LightBatch batch, float[] unshadedWatts, float[] caughtWatts, double share) {
        for (int i = 0; i < batch.capacity; i++) {
            int k = batch.panel[i];
            if (k >= 0) {
                incident[k] += batch.watts[i] * batch.beam;
                reflected[k] += unshadedWatts[i] * share * batch.beam;
                caught[k] += caughtWatts[i] * share * batch.beam;
                rays[k] += unshadedWatts[i] > 0 ? 1 : 0;
            }
        }
    }

    /** Adds all sums of {@code other}. */
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

    /** Light that panel {@code k} reflected as a beam. */
    public double reflected(int k) {
        return reflected[k];
    }

    /** Reflected light of panel {@code k} that the target caught. */
    public double caught(int k) {
        return caught[k];
    }

    /** Number of rays reflected by panel {@code k}. */
    public int rays(int k) {
        return rays[k];
    }
}
