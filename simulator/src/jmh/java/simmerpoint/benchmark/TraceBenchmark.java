package simmerpoint.benchmark;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;

/**
 * Time per ray of one whole trace, through the method that the command {@code trace} calls: dish built, rays traced and
 * caught, figures and standard errors drawn up. One operation is one ray.
 *
 * <p>{@code mvn -q -P jmh test-compile exec:exec@jmh -Djmh.args="TraceBenchmark"}; {@code -p threads=1} for one core
 * only, {@code -prof gc} for what it allocates.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(2)
public class TraceBenchmark {
    private static final int RAYS = 1 << 20;

    /** Which of {@link Dishes}. */
    @Param
    public Dishes dish;

    /** Threads the trace may use. */
    @Param({"1", "2"})
    public int threads;

    private Scenario scenario;
    private TraceOptions options;

    /** Draws up the scenario; not timed. */
    @Setup
    public void prepare() {
        scenario = dish.scenario();
        options = TraceOptions.defaults().withRays(RAYS).withSeed(1).withThreads(threads);
    }

    /** One trace. */
    @Benchmark
    @OperationsPerInvocation(RAYS)
    public TraceResult trace() {
        return TraceStudy.run(scenario, options, Progress.NONE);
    }
}
