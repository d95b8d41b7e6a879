package simmerpoint.command;

import simmerpoint.scenario.Scenario;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;

/** The work behind {@code trace}. */
@FunctionalInterface
interface Tracer {
    /** Traces a scenario. */
    TraceResult trace(Scenario scenario, TraceOptions options, Progress progress);
}
