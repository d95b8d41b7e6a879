package simmerpoint.study.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.scenario.variants.Variant;
import simmerpoint.scenario.variants.Variants;
import simmerpoint.scenario.variants.VariedKey;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;

class QuickComparisonTest {
    private static final TraceOptions OPTIONS =
            TraceOptions.defaults().withRays(1 << 13).withThreads(2);

    /**
     * Each against a trace of its own: the same watts, the time to boil by integrating the warming step by step to a per cent, the hot spot
     * to five standard errors of both.
     */
    @Test
    void tellsWhatTracesTell() throws Exception {
        List<Variant> variants = Variants.of(
                List.of(ScenarioReader.builtIn().values()),
                List.of(VariedKey.parse("dish.surface.sectors=16,20,24,32"), VariedKey.parse("pan.water=1 l,2 l")));
        Comparison quick = CompareStudy.quick(variants, OPTIONS, Progress.NONE);
        assertTrue(quick.quick());
        assertEquals(variants.size(), quick.rows().size());
        for (ComparedRow row : quick.rows()) {
            TraceResult traced = TraceStudy.run(row.variant().scenario(), OPTIONS, Progress.NONE);
            assertEquals(
                    traced.useful().value(),
                    row.useful().value(),
                    1e-9 * traced.useful().value());
            double seconds = ((BoilingOutcome.Boils) traced.heat().orElseThrow().boil())
                    .seconds()
                    .likely();
            double quickSeconds =
                    ((BoilingOutcome.Boils) row.boil().orElseThrow()).seconds().likely();
            assertEquals(seconds, quickSeconds, 0.01 * seconds);
            double error = Math.hypot(
                    traced.spot().peakFlux().standardError(), row.peakFlux().standardError());
            assertEquals(traced.spot().peakFlux().value(), row.peakFlux().value(), 5 * error);
        }
    }
}
