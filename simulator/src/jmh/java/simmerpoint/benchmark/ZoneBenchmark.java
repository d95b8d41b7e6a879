package simmerpoint.benchmark;

import java.util.List;
import java.util.Optional;
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
import simmerpoint.dish.Cut;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.Zone;
import simmerpoint.dish.cut.BentStrips;
import simmerpoint.dish.cut.Tiles;
import simmerpoint.dish.cut.Zoned;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.pan.Finish;
import simmerpoint.pan.Pan;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Stand;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.sun.Sunlight;
import simmerpoint.sun.UniformDiscSun;

/**
 * Time per ray of a dish of one zone, of the same in two zones with two mirrors, and of strips with tiles over their edge. One operation
 * is one ray.
 *
 * <p>{@code mvn -q -P jmh test-compile exec:exec@jmh -Djmh.args="ZoneBenchmark"}
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ZoneBenchmark {
    private static final int RAYS = 1 << 20;
    private static final double F = 0.6;
    private static final Mirror FILM = new Mirror("film", 0.85, 0.02, 5e-3, 1e-3, 0.05, 20e-3, 0.02, 0);
    private static final Mirror FOIL = new Mirror("foil", 0.8, 0.05, 15e-3, 2e-3, 0.1, 20e-3, 0.02, 0);

    /** How the dish is made up. */
    @Param({"one", "two", "patched"})
    public String zones;

    private Scenario scenario;
    private TraceOptions options;

    /** Draws up the scenario; not timed. */
    @Setup
    public void prepare() {
        Cut strips = new BentStrips(24);
        DishPlan one = new DishPlan(1.2, F, 0.06, 0, strips);
        DishPlan dish = switch (zones) {
            case "two" -> zoned(one, new DishPlan(0.8, F, 0.06, 0, strips), new DishPlan(1.2, F, 0.8, 0, strips));
            case "patched" ->
                zoned(one, new DishPlan(0.84, F, 0.06, 0, strips), new DishPlan(1.2, F, 0.78, 0, Tiles.square(0.05)));
            default -> one;
        };
        scenario = new Scenario(
                zones,
                dish,
                FILM,
                new Sunlight(Math.toRadians(50), 850, new UniformDiscSun(4.65e-3)),
                Aim.PERFECT,
                new Pan(0.24, 0.11, new Finish("own figures", 0.9)),
                Stand.AT_FOCUS);
        options = TraceOptions.defaults().withRays(RAYS).withSeed(1).withThreads(1);
    }

    private static DishPlan zoned(DishPlan dish, DishPlan inner, DishPlan outer) {
        return dish.withCut(new Zoned(
                List.of(new Zone("middle", inner, Optional.empty()), new Zone("rim", outer, Optional.of(FOIL)))));
    }

    /** One trace. */
    @Benchmark
    @OperationsPerInvocation(RAYS)
    public TraceResult trace() {
        return TraceStudy.run(scenario, options, Progress.NONE);
    }
}
