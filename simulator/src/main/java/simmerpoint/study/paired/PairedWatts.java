package simmerpoint.study.paired;

import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import simmerpoint.sampling.Estimate;
import simmerpoint.sampling.Replicates;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.trace.HeatResult;
import simmerpoint.study.trace.UsefulPower;
import simmerpoint.target.Ledger;

/**
 * Watts of one scenario, kept replicate by replicate. Two scenarios cast with the same seed and number of rays share
 * their samples place by place on the aperture, so the differences of their replicates have a far smaller standard error
 * than either figure has.
 *
 * @param scenario what was traced
 * @param outlineArea area of the dish's outline projected along the axis, m²
 * @param apertureArea area of the mirrors alone projected along the axis, m²
 * @param panels number of panels
 * @param ledger where the light went
 * @param heat what that light does to the pan's water; empty for a bare disc
 * @param caughtByReplicate caught watts of each replicate
 * @param usefulByReplicate {@link UsefulPower} of each replicate, W
 */
public record PairedWatts(
        Scenario scenario,
        double outlineArea,
        double apertureArea,
        int panels,
        Ledger ledger,
        Optional<HeatResult> heat,
        double[] caughtByReplicate,
        double[] usefulByReplicate) {
    /** The figure it is judged by, see {@link UsefulPower}: cooking power of a pan, caught watts of a bare disc. */
    public Estimate useful() {
        return UsefulPower.mean(usefulByReplicate);
    }

    /** That figure less the one of {@code other}, with the standard error of the difference. */
    public Estimate usefulBeyond(PairedWatts other) {
        return beyond(other, r -> usefulByReplicate[r], r -> other.usefulByReplicate[r]);
    }

    /** Watts caught by the whole target. */
    public Estimate caught() {
        return ledger.caught();
    }

    /** Watts taken up by the pan of caught and direct light; for a bare disc the same as {@link #caught()}. */
    public Estimate absorbed() {
        return ledger.absorbed();
    }

    /** Caught watts less those of {@code other}, with the standard error of the difference. */
    public Estimate caughtBeyond(PairedWatts other) {
        return beyond(other, r -> caughtByReplicate[r], r -> other.caughtByReplicate[r]);
    }

    private Estimate beyond(PairedWatts other, IntToDoubleFunction mine, IntToDoubleFunction others) {
        int n = caughtByReplicate.length;
        if (other.caughtByReplicate.length != n) {
            throw new IllegalArgumentException("paired figures need equally many replicates");
        }
        return Replicates.mean(n, r -> mine.applyAsDouble(r) - others.applyAsDouble(r));
    }
}
