package simmerpoint.report;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.scenario.values.ScenarioValues;
import simmerpoint.scenario.variants.Variant;
import simmerpoint.scenario.variants.Variants;
import simmerpoint.scenario.variants.VariedKey;
import simmerpoint.study.compare.CompareStudy;
import simmerpoint.study.compare.Comparison;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/** Comparisons with few rays for tests of words, files and pictures. */
public final class SampleComparisons {
    private SampleComparisons() {}

    /** The built-in example with these keys varied. */
    public static Comparison of(String... typed) {
        return of(TraceOptions.defaults().withThreads(2), typed);
    }

    static Comparison of(TraceOptions options, String... typed) {
        return run(ScenarioReader.builtIn().values(), options, typed);
    }

    /** A scenario of that text with these keys varied. */
    public static Comparison ofFile(String text, String... typed) {
        try {
            ScenarioValues scenario = ScenarioReader.values("compared.yaml", text, Path.of(""));
            return run(scenario, TraceOptions.defaults().withThreads(2), typed);
        } catch (ScenarioException e) {
            throw new IllegalArgumentException(e);
        }
    }

    private static Comparison run(ScenarioValues scenario, TraceOptions options, String... typed) {
        try {
            List<VariedKey> keys = new ArrayList<>();
            for (String each : typed) {
                keys.add(VariedKey.parse(each));
            }
            List<Variant> variants = Variants.of(List.of(scenario), keys);
            return CompareStudy.run(variants, options.withRays(1 << 12).withSeed(3), Progress.NONE);
        } catch (ScenarioException e) {
            throw new IllegalArgumentException(e);
        }
    }
}
