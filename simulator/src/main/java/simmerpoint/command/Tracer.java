package simmerpoint.command;

import simmerpoint.scenario.Scenario;
import simmerpoint.study.Progress;
import simmerpoint.study.TraceOptions;
import simmerpoint.study.TraceResult;

/** The work behind {@code trace}. */
@FunctionalInterface
interface Tracer {
    /** Traces a scenario. */
    TraceResult trace(Scenario scenario, TraceOptions options, Progress progress);
}
