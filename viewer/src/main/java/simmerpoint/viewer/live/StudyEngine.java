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
 * Runs the studies that take longer than a drag can wait for. Starts after a pause and is cancelled by any change.
 */
public final class StudyEngine implements AutoCloseable {
    /** Time without a change before the studies start, ms. */
    static final long PAUSE_MILLIS = 250;

    private static final double TIMES_SHARE = 0.25;
    private static final double PAN_SHARE = 0.5;

    private final TraceOptions asked;
    private final LatestTaskExecutor executor;
    private final LatestValueDelivery<StudyState> out;
    private final ResultCache<PanResult> pans = new ResultCache<>();
    private final ResultCache<AimResult> aims = new ResultCache<>();
    private volatile StudyState state = StudyState.NOTHING_YET;

    /** An idle engine, see {@link LiveEngine#LiveEngine}. */
    public StudyEngine(TraceOptions asked, Executor delivery, Consumer<StudyState> listener) {
        this(asked, delivery, listener, PAUSE_MILLIS);
    }

    StudyEngine(TraceOptions asked, Executor delivery, Consumer<StudyState> listener, long pauseMillis) {
        this.asked = asked;
        executor = new LatestTaskExecutor("studies", pauseMillis);
        out = new LatestValueDelivery<>(delivery, listener);
    }

    /** Starts the studies of {@code scenario} and cancels earlier ones. Returns immediately. */
    public void study(Scenario scenario) {
        executor.submit(new Run(scenario));
    }

    /** Cancels all work. */
    public void stop() {
        executor.cancel();
    }

    @Override
    public void close() {
        executor.close();
    }

    /** The studies of one scenario; on the executor's thread. */
    private final class Run implements LatestTaskExecutor.Task {
        private final Scenario scenario;

        Run(Scenario scenario) {
            this.scenario = scenario;
        }

        @Override
        public void runFirst() {
            Optional<PanResult> pan = pans.get(scenario);
            Optional<AimResult> aim = aims.get(scenario);
            if (aim.isPresent() && pan.isPresent() == hasPan()) {
                Optional<AimTimes> times = aim.map(AimResult::times);
                tell(new StudyState(Optional.of(scenario), pan, times, aim, false, 1, Optional.empty()));
            }
        }

        private boolean hasPan() {
            return scenario.cooking().isPresent();
        }

        @Override
        public void runRest() {
            StudyState before = state;
            if (before.scenario().filter(scenario::equals).isPresent() && !before.working() && before.done() >= 1) {
                return;
            }
            tell(new StudyState(
                    Optional.of(scenario), before.pan(), before.times(), before.aim(), true, 0, Optional.empty()));
            boolean finished = false;
            try {
                Optional<String> times = TaskFailures.run(this::studyTimes);
                Optional<String> pan = TaskFailures.run(this::studyPan);
                Optional<String> aim = times.or(() -> TaskFailures.run(this::studyAim));
                tell(state.atRest(1, pan.or(() -> aim)));
                finished = true;
            } finally {
                if (!finished) {
                    tell(state.atRest(0, Optional.empty()));
                }
            }
        }

        /** Always visible, so it is computed first. */
        private void studyTimes() {
            AimTimes times = aims.get(scenario)
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
                    pans.get(scenario).orElseGet(() -> PanStudy.run(scenario, asked, telling(TIMES_SHARE, PAN_SHARE)));
            pans.put(scenario, result);
            tell(state.withPan(Optional.of(result)).at(PAN_SHARE));
        }

        private void studyAim() {
            AimResult result = aims.get(scenario)
                    .orElseGet(() -> AimStudy.drawn(state.times().orElseThrow(), telling(PAN_SHARE, 1)));
            aims.put(scenario, result);
            tell(state.withAim(Optional.of(result)).at(1));
        }

        private Progress telling(double from, double to) {
            return (done, detail) -> {
                tell(state.at(from + (to - from) * done));
                return executor.shouldContinue();
            };
        }

        private void tell(StudyState next) {
            state = next;
            out.deliver(next);
        }
    }
}
