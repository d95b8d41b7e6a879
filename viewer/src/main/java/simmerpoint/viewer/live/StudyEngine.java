package simmerpoint.viewer.live;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.PanResult;
import simmerpoint.study.PanStudy;
import simmerpoint.study.Progress;
import simmerpoint.study.TraceOptions;

/**
 * The slower lane: studies that take longer than anyone waits for with a hand on the pan. Begins after a pause and is
 * broken off by whatever comes next.
 */
public final class StudyEngine implements AutoCloseable {
    /** Without a change for so long somebody pauses, ms. */
    static final long PAUSE_MILLIS = 250;

    private final TraceOptions asked;
    private final Lane lane;
    private final Mailbox<StudyState> out;
    private volatile StudyState state = StudyState.NOTHING_YET;

    /** An engine at rest, see {@link LiveEngine#LiveEngine}. */
    public StudyEngine(TraceOptions asked, Executor delivery, Consumer<StudyState> listener) {
        this(asked, delivery, listener, PAUSE_MILLIS);
    }

    StudyEngine(TraceOptions asked, Executor delivery, Consumer<StudyState> listener, long pauseMillis) {
        this.asked = asked;
        lane = new Lane("studies", pauseMillis);
        out = new Mailbox<>(delivery, listener);
    }

    /** Asks for the studies of {@code scenario} instead of any earlier one. Returns at once. */
    public void study(Scenario scenario) {
        lane.put(new Run(scenario));
    }

    /** Breaks off whatever is under way. */
    public void stop() {
        lane.clear();
    }

    @Override
    public void close() {
        lane.close();
    }

    /** The studies of one scenario; lives on the lane's thread. */
    private final class Run implements Lane.Job {
        private final Scenario scenario;

        Run(Scenario scenario) {
            this.scenario = scenario;
        }

        @Override
        public void first() {
            tell(state.pan(), hasPan(), 0, Optional.empty());
        }

        private boolean hasPan() {
            return scenario.kitchen().isPresent();
        }

        @Override
        public void rest() {
            if (!hasPan()) {
                tell(Optional.empty(), false, 1, Optional.empty());
                return;
            }
            boolean finished = false;
            try {
                Optional<String> refusal = Refusals.of(
                        () -> tell(Optional.of(PanStudy.run(scenario, asked, telling())), false, 1, Optional.empty()));
                refusal.ifPresent(why -> tell(state.pan(), false, 1, refusal));
                finished = true;
            } finally {
                if (!finished) {
                    tell(state.pan(), false, 0, Optional.empty());
                }
            }
        }

        private Progress telling() {
            return (done, detail) -> {
                tell(state.pan(), true, done, Optional.empty());
                return lane.goOn();
            };
        }

        private void tell(Optional<PanResult> pan, boolean working, double done, Optional<String> refusal) {
            state = new StudyState(Optional.of(scenario), pan, working, done, refusal);
            out.put(state);
        }
    }
}
