package simmerpoint.viewer.live;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.light.PanelStudy;
import simmerpoint.study.light.PanelWatts;
import simmerpoint.study.light.RaySample;
import simmerpoint.study.light.StoredLight;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/**
 * Watts of each panel and a few sample rays for the latest scenario: first from stored light if only the pan has moved, else
 * from few rays and then from many. Dishes whose panels block each other are traced every time. Runs on its own thread, like
 * {@link LiveEngine}.
 */
public final class PanelEngine implements AutoCloseable {
    /** Rays behind the first figures of another dish or another aim. */
    public static final long COARSE_RAYS = 1L << 13;

    /** Least rays behind the last ones. */
    public static final long LEAST_RAYS = 1L << 16;

    /** Most rays behind the last ones. */
    public static final long MOST_RAYS = 1L << 18;

    /** Rays to be drawn. */
    public static final int DRAWN = 26;

    private static final long RAYS_PER_PANEL = 64;

    private final TraceOptions asked;
    private final LatestTaskExecutor executor = new LatestTaskExecutor("panels", 0);
    private final LatestValueDelivery<PanelState> out;
    private Optional<StoredLight> stored = Optional.empty();
    private Optional<PanelWatts> newest = Optional.empty();
    private RaySample sample = RaySample.NONE;

    /**
     * An idle engine.
     *
     * @param asked seed and threads
     * @param delivery where the listener is called
     * @param listener gets every state
     */
    public PanelEngine(TraceOptions asked, Executor delivery, Consumer<PanelState> listener) {
        this.asked = asked;
        out = new LatestValueDelivery<>(delivery, listener);
    }

    /** Starts tracing {@code scenario} and cancels earlier work. Returns immediately. */
    public void show(Scenario scenario) {
        executor.submit(new Run(scenario));
    }

    @Override
    public void close() {
        executor.close();
    }

    /** The task for one scenario; on the executor's thread. */
    private final class Run implements LatestTaskExecutor.Task {
        private final Scenario scenario;
        private boolean refused;
        private long raysSoFar;

        Run(Scenario scenario) {
            this.scenario = scenario;
        }

        @Override
        public void runFirst() {
            guarded(() -> {
                if (stored.isEmpty() || !stored.get().serves(scenario)) {
                    cast(COARSE_RAYS, Progress.NONE);
                } else {
                    raysSoFar = stored.get().rays();
                    tell(stored.get().panelsFor(scenario));
                }
            });
        }

        @Override
        public void runRest() {
            long wanted = Math.max(
                    LEAST_RAYS,
                    Math.min(
                            MOST_RAYS,
                            RAYS_PER_PANEL * newest.map(PanelWatts::panels).orElse(0)));
            if (!refused && raysSoFar < wanted) {
                guarded(() -> cast(wanted, (share, detail) -> executor.shouldContinue()));
            }
        }

        private void cast(long rays, Progress progress) {
            TraceOptions options = asked.withRays(rays).withPrecision(0);
            StoredLight light = StoredLight.cast(scenario, options, progress);
            boolean serves = light.serves(scenario);
            stored = serves ? Optional.of(light) : Optional.empty();
            sample = light.sample(DRAWN);
            raysSoFar = light.rays();
            tell(serves ? light.panelsFor(scenario) : PanelStudy.run(scenario, options, progress));
        }

        private void tell(PanelWatts panels) {
            newest = Optional.of(panels);
            out.deliver(new PanelState(scenario, newest, sample, Optional.empty()));
        }

        private void guarded(Runnable work) {
            TaskFailures.run(work).ifPresent(this::refuse);
        }

        private void refuse(String why) {
            refused = true;
            out.deliver(new PanelState(scenario, newest, sample, Optional.of(why)));
        }
    }
}
