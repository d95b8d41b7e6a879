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
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import simmerpoint.study.pan.MoveStudy;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;

/**
 * A pan under 144 panels at one position, and at 41 positions of its pull-back with its shadow judged anew at each. One
 * operation is one ray; the second time divided by the first is what the other 40 positions cost.
 *
 * <p>{@code mvn -q -P jmh test-compile exec:exec@jmh -Djmh.args="MoveBenchmark"}
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class MoveBenchmark {
    private static final int RAYS = 1 << 18;

    /** Which of {@link Dishes}. */
    @Param({"PAN", "PAN_ALL_FLAWS"})
    public Dishes dish;

    private static TraceOptions options() {
        return TraceOptions.defaults().withRays(RAYS).withThreads(1);
    }

    /** One position. */
    @Benchmark
    @OperationsPerInvocation(RAYS)
    public TraceResult onePosition() {
        return TraceStudy.run(dish.scenario(), options(), Progress.NONE);
    }

    /** 41 positions from 10 cm towards the dish to 10 cm away from it. */
    @Benchmark
    @OperationsPerInvocation(RAYS)
    public MoveStudy.Curve fortyOnePositions() {
        return MoveStudy.run(dish.scenario(), MoveStudy.Move.PULL_BACK, -0.1, 0.1, 41, options(), Progress.NONE);
    }
}
