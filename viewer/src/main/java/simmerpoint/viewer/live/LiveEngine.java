package simmerpoint.viewer.live;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.stream.LongStream;
import simmerpoint.answer.trace.TraceSummary;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.light.StoredLight;
import simmerpoint.study.likely.LikelyStudy;
import simmerpoint.study.trace.LikelyResult;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.units.UnitSystem;

/**
 * Traces the latest scenario: first from stored light if only the pan has moved, else with few rays; then with more and more,
 * up to those asked for. The last result is that of {@link TraceStudy} with the options asked for and of {@link LikelyStudy}, so it
 * equals that of the command line. A newer scenario cancels the older one. Runs on its own thread (and those of the studies); states are
 * delivered through the executor in order, without intermediate ones of a burst.
 */
public final class LiveEngine implements AutoCloseable {
    /** Rays of the first answer. */
    public static final long COARSE_RAYS = 1L << 13;

    /** Rays whose light is kept to be caught anew. */
    public static final long STORED_RAYS = 1L << 16;

    private static final int STEP_FACTOR = 4;

    /** A hand that rests for less is still moving: what is traced for its place would be in the way of the next one. */
    private static final long HAND_MILLIS = 60;

    private final TraceOptions asked;
    private final LatestTaskExecutor executor = new LatestTaskExecutor("live-answers", 0);
    private final LatestValueDelivery<LiveState> out;
    private Optional<StoredLight> stored = Optional.empty();
    private final ResultCache<TraceResult> settled = new ResultCache<>();
    private Optional<TraceResult> newest = Optional.empty();
    private Map<UnitSystem, TraceSummary> summaries = Map.of();
    private int warmUps = 15;
    private long runs;

    /**
     * An idle engine.
     *
     * @param asked how the last, finest result is traced
     * @param delivery where the listener is called
     * @param listener gets every state
     */
    public LiveEngine(TraceOptions asked, Executor delivery, Consumer<LiveState> listener) {
        this.asked = asked;
        out = new LatestValueDelivery<>(delivery, listener);
    }

    /** Starts tracing {@code scenario} and cancels earlier work. Returns immediately. Doubts are not looked at. */
    public synchronized void show(Scenario scenario) {
        executor.submit(new Run(scenario, Optional.empty(), ++runs));
    }

    /** The same for what was read; the last result has the likely range over its doubts. */
    public synchronized void show(CheckedScenario read) {
        executor.submit(new Run(read.scenario(), Optional.of(read), ++runs));
    }

    /** Shows that there is no result for {@code scenario}, for instance because its file names no moment. */
    public synchronized void refuse(Scenario scenario, String why) {
        executor.submit(new Refused(new Run(scenario, Optional.empty(), ++runs), why));
    }

    /** Stops all work. */
    @Override
    public void close() {
        executor.close();
    }

    private record Refused(Run run, String why) implements LatestTaskExecutor.Task {
        @Override
        public void runFirst() {
            run.refuse(why);
        }

        @Override
        public void runRest() {
            // Nothing follows.
        }
    }

    /** The task for one scenario; on the executor's thread. */
    private final class Run implements LatestTaskExecutor.Task {
        private final Scenario scenario;
        private final Optional<CheckedScenario> read;
        private final long number;
        private long raysSoFar;
        private double done;
        private boolean refused;
        private boolean known;
        private boolean moving;

        Run(Scenario scenario, Optional<CheckedScenario> read, long number) {
            this.scenario = scenario;
            this.read = read;
            this.number = number;
        }

        @Override
        public void runFirst() {
            guarded(() -> {
                Optional<TraceResult> before = settled.get(scenario);
                if (before.isPresent()) {
                    known = true;
                    found(before.get(), true);
                } else if (stored.isPresent() && stored.get().serves(scenario)) {
                    raysSoFar = STORED_RAYS;
                    moving = true;
                    found(stored.get().catchFor(scenario, Progress.NONE), false);
                } else {
                    raysSoFar = Math.min(COARSE_RAYS, asked.rays());
                    found(trace(coarse(raysSoFar), Progress.NONE), false);
                }
            });
        }

        @Override
        public long pauseMillis() {
            return moving ? HAND_MILLIS : 0;
        }

        @Override
        public void runRest() {
            if (refused) {
                return;
            }
            guarded(() -> {
                if (!known) {
                    refine();
                }
                store();
            });
        }

        private void refine() {
            long[] steps = LongStream.iterate(raysSoFar * STEP_FACTOR, n -> n < asked.rays(), n -> n * STEP_FACTOR)
                    .toArray();
            double all = LongStream.of(steps).sum() + asked.rays();
            double before = 0;
            for (long rays : steps) {
                found(trace(coarse(rays), telling(before / all, (before + rays) / all)), false);
                before += rays;
            }
            TraceResult last = trace(asked, telling(before / all, 1));
            if (read.isPresent()) {
                found(last, false);
                last = last.withLikely(likely(read.get()));
            }
            settled.put(scenario, last);
            found(last, true);
        }

        private LikelyResult likely(CheckedScenario whole) {
            return LikelyStudy.run(whole, LikelyStudy.FOR_RANGE, asked, (share, detail) -> executor.shouldContinue());
        }

        private TraceOptions coarse(long rays) {
            return asked.withRays(rays).withPrecision(0);
        }

        private TraceResult trace(TraceOptions options, Progress progress) {
            return TraceStudy.run(scenario, options, progress);
        }

        /** Light is not stored if panels block each other. */
        private void store() {
            if (stored.isEmpty() || !stored.get().serves(scenario)) {
                stored = Optional.empty();
                StoredLight light =
                        StoredLight.cast(scenario, coarse(STORED_RAYS), (share, detail) -> executor.shouldContinue());
                stored = Optional.of(light).filter(s -> s.serves(scenario));
                stored.ifPresent(this::warmUp);
            }
        }

        /**
         * Catches the light a few times at startup, so that the code is compiled before the first drag (measured: 170 ms for
         * the first catch, 20 ms for the tenth).
         */
        private void warmUp(StoredLight light) {
            for (; warmUps > 0 && executor.shouldContinue(); warmUps--) {
                light.catchFor(scenario, (share, detail) -> executor.shouldContinue());
            }
        }

        private Progress telling(double from, double to) {
            return (share, detail) -> {
                done = from + (to - from) * share;
                tell(false, Optional.empty());
                return executor.shouldContinue();
            };
        }

        private void guarded(Runnable work) {
            TaskFailures.run(work).ifPresent(this::refuse);
        }

        private void found(TraceResult result, boolean settled) {
            newest = Optional.of(result);
            summaries = TraceSummary.inAllUnits(result);
            tell(settled, Optional.empty());
        }

        private void refuse(String why) {
            refused = true;
            tell(true, Optional.of(why));
        }

        private void tell(boolean settled, Optional<String> refusal) {
            out.deliver(new LiveState(number, scenario, newest, summaries, settled ? 1 : done, settled, refusal));
        }
    }
}
