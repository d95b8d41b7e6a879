package simmerpoint.study.trace;

import java.util.Optional;
import simmerpoint.heat.balance.StandardCookingPower;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.target.CaughtByFace;
import simmerpoint.target.FluxMaps;
import simmerpoint.target.Ledger;
import simmerpoint.target.Spot;

/**
 * What one traced scenario says.
 *
 * @param scenario what was traced
 * @param outlineArea area of the dish's outline projected along the axis, m²
 * @param apertureArea area of the mirrors alone projected along the axis, m²
 * @param panels number of panels
 * @param ledger where the light went
 * @param spot the spot figures
 * @param maps the flux maps
 * @param faces caught light by face
 * @param heat what that light does to the pan's water; empty for a bare disc
 * @param seed of the random scrambles and of the build errors
 * @param replicates number of independent replicates behind every standard error
 * @param precisionReached whether the asked precision was reached before the bound on rays; true if none was asked
 * @param run what differs from run to run
 * @param likely what is likely over all doubts, if that was worked out; all else is for the figures exactly as given
 * @param aimAgainMinutes how long after a dead-on aim it is to be aimed again, if that was worked out and is ever needed
 * @param betterHeight a height at which the pan gets clearly more, if that was looked for and there is one
 */
public record TraceResult(
        Scenario scenario,
        double outlineArea,
        double apertureArea,
        int panels,
        Ledger ledger,
        Spot spot,
        FluxMaps maps,
        CaughtByFace faces,
        Optional<HeatResult> heat,
        long seed,
        int replicates,
        boolean precisionReached,
        RunInfo run,
        Optional<LikelyResult> likely,
        Optional<Estimate> aimAgainMinutes,
        Optional<BetterHeight> betterHeight) {
    /** Without a look at doubts and aiming. */
    public TraceResult(
            Scenario scenario,
            double outlineArea,
            double apertureArea,
            int panels,
            Ledger ledger,
            Spot spot,
            FluxMaps maps,
            CaughtByFace faces,
            Optional<HeatResult> heat,
            long seed,
            int replicates,
            boolean precisionReached,
            RunInfo run) {
        this(
                scenario,
                outlineArea,
                apertureArea,
                panels,
                ledger,
                spot,
                maps,
                faces,
                heat,
                seed,
                replicates,
                precisionReached,
                run,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** The same with what is likely over all doubts. */
    public TraceResult withLikely(LikelyResult result) {
        return with(Optional.of(result), aimAgainMinutes, betterHeight);
    }

    /** The same with when to aim again. */
    public TraceResult withAimAgain(Optional<Estimate> minutes) {
        return with(likely, minutes, betterHeight);
    }

    /** The same with a height at which the pan gets more. */
    public TraceResult withBetterHeight(Optional<BetterHeight> height) {
        return with(likely, aimAgainMinutes, height);
    }

    private TraceResult with(Optional<LikelyResult> result, Optional<Estimate> minutes, Optional<BetterHeight> height) {
        return new TraceResult(
                scenario,
                outlineArea,
                apertureArea,
                panels,
                ledger,
                spot,
                maps,
                faces,
                heat,
                seed,
                replicates,
                precisionReached,
                run,
                result,
                minutes,
                height);
    }

    /** How hot the bottom of the pan gets, worked out once; empty for a bare disc and for a pan in a second skin, in which nobody fries. */
    public Optional<PlateResult> plate() {
        return heat.filter(h -> h.cooking().vessel().cover().isEmpty())
                .map(h -> h.plate(maps, likely.map(LikelyResult::lightPerLoss)));
    }

    /** The likely figure it is judged by, W: the median over all doubts, or that of the figures as given. */
    public double likelyPower() {
        return likely.map(result -> result.power().likely()).orElse(useful().value());
    }

    /** The figure it is judged by, see {@link UsefulPower}: cooking power of a pan, caught watts of a bare disc. */
    public Estimate useful() {
        return heat.map(HeatResult::cookingPower).orElse(ledger.caught());
    }

    /**
     * Cooking power standardised to the irradiance of {@link StandardCookingPower}, as if all light were proportionally
     * stronger or weaker; the irradiance is that of the beam alone. Empty for a bare disc and without sun.
     */
    public Optional<Estimate> standardCookingPower() {
        double beam = scenario.sun().beamWattsPerSquareMetre();
        return heat.filter(h -> beam > 0)
                .map(h -> h.cookingPower().times(StandardCookingPower.STANDARD_IRRADIANCE / beam));
    }

    /**
     * What differs from run to run and is kept out of comparisons.
     *
     * @param rays traced
     * @param threads used
     * @param traceSeconds wall time of the ray loop
     */
    public record RunInfo(long rays, int threads, double traceSeconds) {}
}
