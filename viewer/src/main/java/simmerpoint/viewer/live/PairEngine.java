package simmerpoint.viewer.live;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.paired.GluingLuck;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedTrace;
import simmerpoint.study.trace.HeatResult;
import simmerpoint.study.trace.TraceOptions;

/** Traces two scenarios with the same samples, so that their difference is more exact than either; only the latest pair. */
public final class PairEngine implements AutoCloseable {
    private static final long PAUSE_MILLIS = 200;

    private final TraceOptions asked;
    private final LatestTaskExecutor executor = new LatestTaskExecutor("pairs", PAUSE_MILLIS);
    private final LatestValueDelivery<PairState> out;
    private volatile PairState state = PairState.NOTHING_YET;

    /** An idle engine, see {@link LiveEngine#LiveEngine}. */
    public PairEngine(TraceOptions asked, Executor delivery, Consumer<PairState> listener) {
        this.asked = asked.withPrecision(0);
        out = new LatestValueDelivery<>(delivery, listener);
    }

    /** Starts tracing this pair and cancels an earlier one. Returns immediately. */
    public void pair(Scenario kept, Scenario now) {
        executor.submit(new Run(kept, now));
    }

    /** Cancels all work. */
    public void stop() {
        executor.cancel();
    }

    @Override
    public void close() {
        executor.close();
    }

    /** One pair; on the executor's thread. */
    private final class Run implements LatestTaskExecutor.Task {
        private final Scenario kept;
        private final Scenario now;

        Run(Scenario kept, Scenario now) {
            this.kept = kept;
            this.now = now;
        }

        @Override
        public void runFirst() {
            // No quick result.
        }

        @Override
        public void runRest() {
            tell(state.at(0));
            boolean finished = false;
            try {
                Optional<String> refusal = TaskFailures.run(this::trace);
                tell(state.atRest(refusal));
                finished = true;
            } finally {
                if (!finished) {
                    tell(state.atRest(Optional.empty()));
                }
            }
        }

        /** Boiling times are computed here, since they take too long for the FX thread. */
        private void trace() {
            List<PairedTrace> pair = PairedStudy.traces(List.of(kept, now), asked, (done, detail) -> {
                tell(state.at(done));
                return executor.shouldContinue();
            });
            pair.forEach(traced -> traced.trace().heat().ifPresent(HeatResult::boil));
            Optional<GluingLuck> luck =
                    GluingLuck.ifAny(List.of(kept, now), asked, (done, detail) -> executor.shouldContinue());
            state = new PairState(Optional.of(pair.get(0)), Optional.of(pair.get(1)), luck, true, 1, Optional.empty());
        }

        private void tell(PairState next) {
            state = next;
            out.deliver(next);
        }
    }
}
