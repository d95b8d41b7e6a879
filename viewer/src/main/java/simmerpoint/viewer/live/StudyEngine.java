package simmerpoint.viewer.live;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.aim.AimPlan;
import simmerpoint.study.aim.AimResult;
import simmerpoint.study.aim.AimStudy;
import simmerpoint.study.aim.AimTimes;
import simmerpoint.study.pan.PanResult;
import simmerpoint.study.pan.PanStudy;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/**
 * The slower lane: studies that take longer than anyone waits for with a hand on the pan. Begins after a pause and is
 * broken off by whatever comes next.
 */
public final class StudyEngine implements AutoCloseable {
    /** Without a change for so long somebody pauses, ms. */
    static final long PAUSE_MILLIS = 250;

    private static final double TIMES_SHARE = 0.25;
    private static final double PAN_SHARE = 0.5;

    private final TraceOptions asked;
    private final LatestTaskExecutor lane;
    private final LatestValueDelivery<StudyState> out;
    private final ResultCache<PanResult> pans = new ResultCache<>();
    private final ResultCache<AimResult> aims = new ResultCache<>();
    private volatile StudyState state = StudyState.NOTHING_YET;

    /** An engine at rest, see {@link LiveEngine#LiveEngine}. */
    public StudyEngine(TraceOptions asked, Executor delivery, Consumer<StudyState> listener) {
        this(asked, delivery, listener, PAUSE_MILLIS);
    }

    StudyEngine(TraceOptions asked, Executor delivery, Consumer<StudyState> listener, long pauseMillis) {
        this.asked = asked;
        lane = new LatestTaskExecutor("studies", pauseMillis);
        out = new LatestValueDelivery<>(delivery, listener);
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
    private final class Run implements LatestTaskExecutor.Job {
        private final Scenario scenario;

        Run(Scenario scenario) {
            this.scenario = scenario;
        }

        @Override
        public void first() {
            Optional<PanResult> pan = pans.of(scenario);
            Optional<AimResult> aim = aims.of(scenario);
            if (aim.isPresent() && pan.isPresent() == hasPan()) {
                Optional<AimTimes> times = aim.map(AimResult::times);
                tell(new StudyState(Optional.of(scenario), pan, times, aim, false, 1, Optional.empty()));
            }
        }

        private boolean hasPan() {
            return scenario.kitchen().isPresent();
        }

        @Override
        public void rest() {
            StudyState before = state;
            if (before.scenario().filter(scenario::equals).isPresent() && !before.working() && before.done() >= 1) {
                return;
            }
            tell(new StudyState(
                    Optional.of(scenario), before.pan(), before.times(), before.aim(), true, 0, Optional.empty()));
            boolean finished = false;
            try {
                Optional<String> times = TaskFailures.of(this::studyTimes);
                Optional<String> pan = TaskFailures.of(this::studyPan);
                Optional<String> aim = times.or(() -> TaskFailures.of(this::studyAim));
                tell(state.atRest(1, pan.or(() -> aim)));
                finished = true;
            } finally {
                if (!finished) {
                    tell(state.atRest(0, Optional.empty()));
                }
            }
        }

        /** What is in sight all the time comes first. */
        private void studyTimes() {
            AimTimes times = aims.of(scenario)
                    .map(AimResult::times)
                    .orElseGet(() -> AimStudy.times(scenario, AimPlan.USUAL, asked, telling(0, TIMES_SHARE)));
            tell(state.withTimes(Optional.of(times)).at(TIMES_SHARE));
        }

        private void studyPan() {
            if (!hasPan()) {
                tell(state.withPan(Optional.empty()));
                return;
            }
            PanResult result =
                    pans.of(scenario).orElseGet(() -> PanStudy.run(scenario, asked, telling(TIMES_SHARE, PAN_SHARE)));
            pans.put(scenario, result);
            tell(state.withPan(Optional.of(result)).at(PAN_SHARE));
        }

        private void studyAim() {
            AimResult result = aims.of(scenario)
                    .orElseGet(() -> AimStudy.drawn(state.times().orElseThrow(), telling(PAN_SHARE, 1)));
            aims.put(scenario, result);
            tell(state.withAim(Optional.of(result)).at(1));
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
