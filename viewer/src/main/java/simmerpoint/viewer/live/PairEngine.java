package simmerpoint.viewer.live;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedTrace;
import simmerpoint.study.trace.HeatResult;
import simmerpoint.study.trace.TraceOptions;

/** Traces two scenarios with the same samples, so that their difference is surer than either; the newest pair wins. */
public final class PairEngine implements AutoCloseable {
    private static final long PAUSE_MILLIS = 200;

    private final TraceOptions asked;
    private final LatestTaskExecutor lane = new LatestTaskExecutor("pairs", PAUSE_MILLIS);
    private final LatestValueDelivery<PairState> out;
    private volatile PairState state = PairState.NOTHING_YET;

    /** An engine at rest, see {@link LiveEngine#LiveEngine}. */
    public PairEngine(TraceOptions asked, Executor delivery, Consumer<PairState> listener) {
        this.asked = asked.withPrecision(0);
        out = new LatestValueDelivery<>(delivery, listener);
    }

    /** Asks for these two instead of any earlier ones. Returns at once. */
    public void pair(Scenario kept, Scenario now) {
        lane.put(new Run(kept, now));
    }

    /** Breaks off whatever is under way. */
    public void stop() {
        lane.clear();
    }

    @Override
    public void close() {
        lane.close();
    }

    /** One pair; lives on the lane's thread. */
    private final class Run implements LatestTaskExecutor.Job {
        private final Scenario kept;
        private final Scenario now;

        Run(Scenario kept, Scenario now) {
            this.kept = kept;
            this.now = now;
        }

        @Override
        public void first() {
            // There is no short answer.
        }

        @Override
        public void rest() {
            tell(state.at(0));
            boolean finished = false;
            try {
                Optional<String> refusal = TaskFailures.of(this::trace);
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
                return lane.goOn();
            });
            pair.forEach(traced -> traced.trace().heat().ifPresent(HeatResult::boil));
            state = new PairState(Optional.of(pair.get(0)), Optional.of(pair.get(1)), true, 1, Optional.empty());
        }

        private void tell(PairState next) {
            state = next;
            out.put(next);
        }
    }
}
