package simmerpoint.viewer.live;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.AimPlan;
import simmerpoint.study.AimResult;
import simmerpoint.study.AimStudy;
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

    /** The curve over the pan's places is looked at while the rest goes on. */
    private static final double PAN_SHARE = 0.5;

    private final TraceOptions asked;
    private final Lane lane;
    private final Mailbox<StudyState> out;
    private final Remembered<PanResult> pans = new Remembered<>();
    private final Remembered<AimResult> aims = new Remembered<>();
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
            Optional<PanResult> pan = pans.of(scenario);
            Optional<AimResult> aim = aims.of(scenario);
            if (aim.isPresent() && pan.isPresent() == scenario.kitchen().isPresent()) {
                tell(new StudyState(Optional.of(scenario), pan, aim, false, 1, Optional.empty()));
            }
        }

        @Override
        public void rest() {
            StudyState before = state;
            if (before.scenario().filter(scenario::equals).isPresent() && !before.working() && before.done() >= 1) {
                return;
            }
            tell(new StudyState(Optional.of(scenario), before.pan(), before.aim(), true, 0, Optional.empty()));
            boolean finished = false;
            try {
                boolean pan = scenario.kitchen().isPresent();
                Optional<String> refusal = pan ? Refusals.of(() -> studyPan(0, PAN_SHARE)) : Optional.empty();
                if (!pan) {
                    tell(state.withPan(Optional.empty()));
                }
                Optional<String> second = Refusals.of(() -> studyAim(pan ? PAN_SHARE : 0, 1));
                tell(state.atRest(1, refusal.or(() -> second)));
                finished = true;
            } finally {
                if (!finished) {
                    tell(state.atRest(0, Optional.empty()));
                }
            }
        }

        private void studyPan(double from, double to) {
            PanResult result = pans.of(scenario).orElseGet(() -> PanStudy.run(scenario, asked, telling(from, to)));
            pans.put(scenario, result);
            tell(state.withPan(Optional.of(result)).at(to));
        }

        private void studyAim(double from, double to) {
            AimResult result =
                    aims.of(scenario).orElseGet(() -> AimStudy.run(scenario, AimPlan.USUAL, asked, telling(from, to)));
            aims.put(scenario, result);
            tell(state.withAim(Optional.of(result)).at(to));
        }

        private Progress telling(double from, double to) {
            return (done, detail) -> {
                tell(state.at(from + (to - from) * done));
                return lane.goOn();
            };
        }

        private void tell(StudyState next) {
            state = next;
            out.put(next);
        }
    }
}
