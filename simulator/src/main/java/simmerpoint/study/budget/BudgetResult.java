package simmerpoint.study.budget;

import java.util.List;
import java.util.Optional;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.build.ShapeTolerance;
import simmerpoint.study.trace.LikelyResult;

/**
 * What each flaw of a cooker costs, in watts of cooking power, or caught by a bare disc.
 *
 * @param scenario as it was given
 * @param built its watts
 * @param perfect watts without any flaw that can be switched off
 * @param total perfect less built
 * @param costs of every flaw that is there, the dearest to have in the built cooker first
 * @param leftInTurn total less the sum of all flaws switched off in turn: what flaws do together
 * @param leftAlone total less the sum of all flaws switched on alone
 * @param absent flaws that the scenario does not have
 * @param fixed flaws that cannot be switched off in it
 * @param sensitivities how watts change with one step of each figure
 * @param run how it was traced
 * @param tolerances how far the dish may be off its plan, in millimetres
 * @param likely what is likely over all doubts, if that was worked out
 */
public record BudgetResult(
        Scenario scenario,
        Estimate built,
        Estimate perfect,
        Estimate total,
        List<FlawCost> costs,
        Estimate leftInTurn,
        Estimate leftAlone,
        List<Flaw> absent,
        List<Flaw> fixed,
        List<Sensitivity> sensitivities,
        Run run,
        List<ShapeTolerance> tolerances,
        Optional<LikelyResult> likely) {
    private static final double NOTHING = 5e-4;

    /**
     * How it was traced.
     *
     * @param seed of scrambles and build errors
     * @param raysEach rays of every trace
     * @param traces number of traces
     * @param threads that worked
     * @param seconds of work
     */
    public record Run(long seed, long raysEach, int traces, int threads, double seconds) {}

    /** Keeps copies of the lists. */
    public BudgetResult {
        costs = List.copyOf(costs);
        absent = List.copyOf(absent);
        fixed = List.copyOf(fixed);
        sensitivities = List.copyOf(sensitivities);
        tolerances = List.copyOf(tolerances);
    }

    /** Without a look at doubts and tolerances. */
    public BudgetResult(
            Scenario scenario,
            Estimate built,
            Estimate perfect,
            Estimate total,
            List<FlawCost> costs,
            Estimate leftInTurn,
            Estimate leftAlone,
            List<Flaw> absent,
            List<Flaw> fixed,
            List<Sensitivity> sensitivities,
            Run run) {
        this(
                scenario,
                built,
                perfect,
                total,
                costs,
                leftInTurn,
                leftAlone,
                absent,
                fixed,
                sensitivities,
                run,
                List.of(),
                Optional.empty());
    }

    /** The same with what is likely over all doubts. */
    public BudgetResult withLikely(LikelyResult result) {
        return new BudgetResult(
                scenario,
                built,
                perfect,
                total,
                costs,
                leftInTurn,
                leftAlone,
                absent,
                fixed,
                sensitivities,
                run,
                tolerances,
                Optional.of(result));
    }

    /** The same with tolerances. */
    BudgetResult withTolerances(List<ShapeTolerance> found) {
        return new BudgetResult(
                scenario,
                built,
                perfect,
                total,
                costs,
                leftInTurn,
                leftAlone,
                absent,
                fixed,
                sensitivities,
                run,
                found,
                likely);
    }

    /** A figure in watts as a share of the perfect cooker's watts; 0 where a perfect cooker gets nothing. */
    public Estimate share(Estimate watts) {
        return perfect.value() > 0 ? watts.times(1 / perfect.value()) : Estimate.exact(0);
    }

    /** Whether watts are surely less than one part in 2,000 of the perfect cooker's: nothing to speak of. */
    public boolean isNothing(Estimate watts) {
        double most = Math.abs(watts.value()) + Significance.ERRORS * watts.standardError();
        return most <= NOTHING * perfect.value();
    }
}
