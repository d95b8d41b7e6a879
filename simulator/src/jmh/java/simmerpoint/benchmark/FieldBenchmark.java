package simmerpoint.benchmark;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import simmerpoint.geometry.Vec;
import simmerpoint.safety.field.FieldBox;
import simmerpoint.safety.field.FieldStudy;
import simmerpoint.safety.field.YardLight;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/**
 * The light in a cube of 100³ cells about a dish from 2²⁰ rays on one thread, the pan in place. One operation is one field.
 *
 * <p>{@code mvn -q -P jmh test-compile exec:exec@jmh -Djmh.args="FieldBenchmark"}
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
@Fork(1)
public class FieldBenchmark {
    private static final int RAYS = 1 << 20;
    private static final int EDGE = 100;
    private static final double CELL = 0.025;

    /** Casts the rays and adds them up. */
    @Benchmark
    public List<YardLight> field() {
        double half = EDGE * CELL / 2;
        FieldBox cube = new FieldBox(new Vec(-half, -half, 0), CELL, EDGE, EDGE, EDGE);
        TraceOptions options = TraceOptions.defaults().withRays(RAYS).withThreads(1);
        return FieldStudy.run(Dishes.PAN_ALL_FLAWS.scenario(), options, List.of(cube), List.of(true), Progress.NONE);
    }
}
