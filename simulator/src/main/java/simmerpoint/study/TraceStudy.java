package simmerpoint.study;

import simmerpoint.scenario.Scenario;

/** Traces one scenario: the main job. */
public final class TraceStudy {
    private TraceStudy() {}

    /** Traces {@code scenario} as {@code options} say, telling {@code progress}. */
    public static TraceResult run(Scenario scenario, TraceOptions options, Progress progress) {
        throw new UnsupportedOperationException("not yet");
    }
}
