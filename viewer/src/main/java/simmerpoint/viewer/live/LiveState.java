package simmerpoint.viewer.live;

import java.util.Map;
import java.util.Optional;
import simmerpoint.answer.trace.TraceSummary;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.units.UnitSystem;

/**
 * How far the answer to the newest scenario has come.
 *
 * @param run number of the scenario, counted from 1
 * @param scenario what is asked for
 * @param result the newest result there is; it may still be that of an earlier scenario, and is missing only before the
 *     first
 * @param summaries what the result says in short, in all units; empty without one
 * @param done share of the work that is done, 0 to 1
 * @param settled whether nothing finer will come: the result is then what the command line gives, or the scenario is
 *     refused
 * @param refusal why there is no answer, in one sentence; empty if there is or will be one
 */
public record LiveState(
        long run,
        Scenario scenario,
        Optional<TraceResult> result,
        Map<UnitSystem, TraceSummary> summaries,
        double done,
        boolean settled,
        Optional<String> refusal) {
    /** Keeps the summaries as they are. */
    public LiveState {
        summaries = Map.copyOf(summaries);
    }

    /** With summaries worked out here and now. */
    public LiveState(
            long run,
            Scenario scenario,
            Optional<TraceResult> result,
            double done,
            boolean settled,
            Optional<String> refusal) {
        this(run, scenario, result, result.map(TraceSummary::inAllUnits).orElse(Map.of()), done, settled, refusal);
    }

    /** Whether the result is that of the scenario asked for. */
    public boolean current() {
        return result.isPresent() && result.get().scenario().equals(scenario);
    }
}
