package simmerpoint.benchmark;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
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
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.scenario.variants.Variant;
import simmerpoint.scenario.variants.Variants;
import simmerpoint.scenario.variants.VariedKey;
import simmerpoint.study.compare.CompareStudy;
import simmerpoint.study.compare.Comparison;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedTrace;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/**
 * 64 variants of the built-in example: the pan pulled back by 0 to 63 mm, which share their light, or slope errors from 3 to
 * 6.15 mrad, which do not. One operation is one variant.
 *
 * <p>{@code mvn -q -P jmh test-compile exec:exec@jmh -Djmh.args="CompareBenchmark"}
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 1, time = 1)
@Measurement(iterations = 2, time = 1)
@Fork(1)
public class CompareBenchmark {
    private static final int VARIANTS = 64;

    /** What is varied. */
    @Param({"stand.pull-back", "mirror.slope-error"})
    public String key;

    /** Threads of the program itself. */
    @Param({"2"})
    public int threads;

    private List<Variant> variants;
    private List<Scenario> scenarios;

    /** Reads the variants. */
    @Setup
    public void read() throws ScenarioException {
        String values = IntStream.range(0, VARIANTS)
                .mapToObj(k -> key.startsWith("stand") ? k + " mm" : 3 + k / 20.0 + " mrad")
                .collect(Collectors.joining(","));
        variants =
                Variants.of(List.of(ScenarioReader.builtIn().values()), List.of(VariedKey.parse(key + "=" + values)));
        scenarios = variants.stream().map(Variant::scenario).toList();
    }

    private TraceOptions options() {
        return TraceOptions.defaults().withThreads(threads);
    }

    /** Everything that compare tells: watts, hot spot, boiling time, tolerance, differences. */
    @Benchmark
    @OperationsPerInvocation(VARIANTS)
    public Comparison compare() {
        return CompareStudy.run(variants, options(), Progress.NONE);
    }

    /** The traces alone, with maps. */
    @Benchmark
    @OperationsPerInvocation(VARIANTS)
    public List<PairedTrace> traces() {
        return PairedStudy.traces(scenarios, options(), Progress.NONE);
    }

    /** Their watts alone. */
    @Benchmark
    @OperationsPerInvocation(VARIANTS)
    public List<PairedWatts> watts() {
        return PairedStudy.watts(scenarios, options(), Progress.NONE);
    }
}
