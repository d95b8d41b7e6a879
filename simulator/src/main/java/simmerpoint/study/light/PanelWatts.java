package simmerpoint.study.light;

import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.target.PanelTally;

/** What every panel of a dish sends and how much of it lands, from stored light; panels by their number. */
public final class PanelWatts {
    private final Scenario scenario;
    private final PanelTally sums;
    private final double perRay;

    PanelWatts(Scenario scenario, PanelTally sums, long rays) {
        this.scenario = scenario;
        this.sums = sums;
        perRay = 1.0 / rays;
    }

    /** Of what. */
    public Scenario scenario() {
        return scenario;
    }

    /** Number of panels. */
    public int panels() {
        return sums.panels();
    }

    /** Sunlight towards panel {@code k}, W. */
    public double incident(int k) {
        return sums.incident(k) * perRay;
    }

    /** What leaves panel {@code k} as a beam, W; less where the target shades it. */
    public double reflected(int k) {
        return sums.reflected(k) * perRay;
    }

    /** What of that the target catches, W. */
    public double caught(int k) {
        return sums.caught(k) * perRay;
    }

    /**
     * Share of what panel {@code k} reflects that is caught; not a number if nothing is known to leave it. The error is
     * √(q(1 − q)/n) of n rays, q = (n·share + 1)/(n + 2): too large rather than too small, since the rays are spread more
     * evenly than by chance, and never 0.
     */
    public Estimate share(int k) {
        double share = sums.caught(k) / sums.reflected(k);
        double n = sums.rays(k);
        double q = (n * share + 1) / (n + 2);
        return new Estimate(share, Math.sqrt(q * (1 - q) / n));
    }
}
