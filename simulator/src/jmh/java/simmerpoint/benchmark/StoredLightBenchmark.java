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
import simmerpoint.setup.Stand;
import simmerpoint.study.light.StoredLight;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;

/**
 * A pan moved under light that is kept, against tracing it anew. One operation is one ray, figures and maps included.
 *
 * <p>{@code mvn -q -P jmh test-compile exec:exec@jmh -Djmh.args="StoredLightBenchmark"}
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class StoredLightBenchmark {
    private static final int RAYS = 1 << 18;

    /** Which of {@link Dishes}. */
    @Param({"PAN_ALL_FLAWS"})
    public Dishes dish;

    /** Threads of the program itself. */
    @Param({"1", "2"})
    public int threads;

    private StoredLight light;
    private Scenario moved;

    /** Casts the light. */
    @Setup
    public void cast() {
        light = StoredLight.cast(dish.scenario(), options(), Progress.NONE);
        moved = dish.scenario().withStand(new Stand(0.05, 0, 0.01, 0));
    }

    private TraceOptions options() {
        return TraceOptions.defaults().withRays(RAYS).withThreads(threads);
    }

    /** All from the start. */
    @Benchmark
    @OperationsPerInvocation(RAYS)
    public TraceResult traceAnew() {
        return TraceStudy.run(moved, options(), Progress.NONE);
    }

    /** The same light caught again. */
    @Benchmark
    @OperationsPerInvocation(RAYS)
    public TraceResult catchAgain() {
        return light.catchFor(moved, Progress.NONE);
    }
}
