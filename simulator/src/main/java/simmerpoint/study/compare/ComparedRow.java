package simmerpoint.study.compare;

import java.util.Optional;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.variants.Variant;
import simmerpoint.study.aim.AimAgain;
import simmerpoint.study.aim.AimTolerance;
import simmerpoint.study.pan.BestStand;
import simmerpoint.study.trace.LikelyResult;
import simmerpoint.study.trace.MaximumFlux;
import simmerpoint.target.Ledger;

/**
 * What one of the compared cookers does.
 *
 * @param variant what was traced
 * @param place its place in the order asked for, from 0
 * @param useful the figure it is ranked by: cooking power of a pan, caught watts of a bare disc
 * @param ledger where the light went
 * @param difference of that figure beyond those of the best, at most 0 but for rounding, with the standard error of the
 *     difference from replicates that share their samples and, where panels are glued askew, what the luck of gluing makes of it
 * @param atBest the same cooker with its pan where it does best; empty if that was not asked
 * @param peakFlux hottest spot of underside or disc, W/m²
 * @param hottestFlux the hottest of all light, for cautions, see {@link MaximumFlux}, W/m²
 * @param boil whether and when the pan's water boils: likely, or over the pan's losses alone; empty for a bare disc
 * @param panels how many panels the dish has; 1 for a smooth dish
 * @param likely what is likely of it over all doubts; empty if that was not asked
 * @param again when it is to be aimed again, at {@link AimTolerance#USUAL_LOSS}; empty if that was not asked
 */
public record ComparedRow(
        Variant variant,
        int place,
        Estimate useful,
        Ledger ledger,
        Estimate difference,
        Optional<BestStand.Found> atBest,
        Estimate peakFlux,
        double hottestFlux,
        Optional<BoilingOutcome> boil,
        int panels,
        Optional<LikelyResult> likely,
        Optional<AimAgain> again) {
    /** A difference below this many of its standard errors is not seen. By chance alone two are passed once in 16 times. */
    public static final double SEEN_ERRORS = 2;

    private static final double ROUNDING = 1e-9;

    /** Watts taken up by the pan; of a bare disc, caught. */
    public Estimate absorbed() {
        return ledger.absorbed();
    }

    /** Cooking power; empty for a bare disc. */
    public Optional<Estimate> cookingPower() {
        return Optional.of(useful).filter(u -> boil.isPresent());
    }

    /** Whether it differs from the best by more than {@link #SEEN_ERRORS} standard errors. */
    public boolean isSeenToDiffer() {
        double gap = Math.abs(difference.value());
        return gap > SEEN_ERRORS * difference.standardError() && gap > ROUNDING * Math.abs(useful.value());
    }

    /** How far the sun has gone when it is to be aimed again, rad; empty as {@link AimAgain#minutes}. */
    public Optional<Estimate> drift() {
        return again.flatMap(AimAgain::radians);
    }

    /** Watts with the pan where it does best; minus infinity if that was not asked. */
    public double bestPlaceWatts() {
        return atBest.map(best -> best.watts().value()).orElse(Double.NEGATIVE_INFINITY);
    }

    /** Time from a dead-on aim until it is to be aimed again, s; empty as {@link AimAgain#minutes}. */
    public Optional<Estimate> againSeconds() {
        return again.flatMap(AimAgain::minutes).map(minutes -> minutes.times(60));
    }
}
