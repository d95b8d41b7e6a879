package simmerpoint.viewer.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import simmerpoint.answer.compare.CompareAnswer;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.scenario.variants.Variant;
import simmerpoint.study.compare.CompareStudy;
import simmerpoint.study.compare.Comparison;
import simmerpoint.study.paired.GluingLuck;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedTrace;
import simmerpoint.study.trace.HeatResult;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.document.OpenedFile;
import simmerpoint.viewer.document.ScenarioDocument;

/** Two designs, without a window. */
class ComparisonModelTest {
    private static final TraceOptions FEW = TraceOptions.defaults().withRays(1 << 13);

    private final ScenarioDocument document = new ScenarioDocument();
    private final KeptDesign kept = KeptDesign.of(document);

    private PairFigures figures() {
        KeptDesign now = KeptDesign.of(document);
        List<PairedTrace> pair =
                PairedStudy.traces(List.of(kept.read().scenario(), now.read().scenario()), FEW, Progress.NONE);
        List<Scenario> both = List.of(kept.read().scenario(), now.read().scenario());
        return new PairFigures(kept, now, pair.get(0), pair.get(1), GluingLuck.ifAny(both, FEW, Progress.NONE));
    }

    /** The luck of gluing included; how long the water takes is over the pan's losses alone, as elsewhere in the window's table. */
    @Test
    void saysWhatTheComparisonOfTheCommandLineSays() {
        document.change(Map.of("mirror.slope-error", "8 mrad", "stand.pull-back", "9 cm"));
        KeptDesign now = KeptDesign.of(document);
        Comparison expected = CompareStudy.run(
                List.of(kept.variant(PairFigures.KEPT), now.variant(PairFigures.NOW)), FEW, Progress.NONE);
        List<PairedTrace> pair =
                PairedStudy.traces(List.of(kept.read().scenario(), now.read().scenario()), FEW, Progress.NONE);
        Comparison mine = figures().comparison();
        for (int k = 0; k < 2; k++) {
            assertEquals(expected.rows().get(k).place(), mine.rows().get(k).place());
            assertEquals(expected.rows().get(k).difference(), mine.rows().get(k).difference());
            assertEquals(expected.rows().get(k).peakFlux(), mine.rows().get(k).peakFlux());
            assertEquals(
                    pair.get(mine.rows().get(k).place()).trace().heat().map(HeatResult::boil),
                    mine.rows().get(k).boil());
            assertEquals(expected.rows().get(k).panels(), mine.rows().get(k).panels());
        }
        assertEquals(CompareAnswer.first(mine, UnitSystem.METRIC), figures().sentence(UnitSystem.METRIC));
        assertTrue(figures().rows(UnitSystem.METRIC).get(0).difference().endsWith(" less"));
    }

    @Test
    void aDifferenceBelowTwoOfItsErrorsIsNotSeen() {
        document.change(Map.of("title", "The same"));
        assertEquals(
                "no difference seen", figures().rows(UnitSystem.METRIC).get(0).difference());
        assertEquals(
                "no difference seen", figures().rows(UnitSystem.INCH).get(1).difference());
        assertTrue(figures().sentence(UnitSystem.METRIC).contains("no difference is seen to"));
    }

    @Test
    void listsTheKeysThatDifferWithTheirValuesAsTypedOrByDefault() {
        document.change(Map.of("stand.pull-back", "3.5 in", "dish.hub", "70 mm"));
        List<PairFigures.Row> keys = PairFigures.differing(kept, KeptDesign.of(document));
        assertEquals(
                List.of("dish.hub", "stand.pull-back"),
                keys.stream().map(PairFigures.Row::name).toList());
        assertEquals("70 mm", keys.get(0).now());
        assertEquals("3.5 in", keys.get(1).now());
        assertEquals("0 cm", keys.get(1).kept());
        assertEquals("hub 70 mm, pull-back 3.5 in", PairFigures.changed(keys, false));
        // 1 in is 25.4 mm by definition.
        List<PairFigures.Row> inches =
                keys.stream().map(row -> row.in(UnitSystem.INCH)).toList();
        assertEquals("2.756\u00a0in", inches.get(0).now());
        assertEquals("3.5\u00a0in", inches.get(1).now());
        List<PairFigures.Row> metric =
                keys.stream().map(row -> row.in(UnitSystem.METRIC)).toList();
        assertEquals("70\u00a0mm", metric.get(0).now());
        assertEquals("88.9\u00a0mm", metric.get(1).now());
    }

    @Test
    void theKeptDesignComesBackInOneStepWhateverWasChanged() throws Exception {
        Scenario before = document.readProperty().get().scenario();
        document.change(Map.of("stand.raise", "2 cm", "pan.diameter", "26 cm"));
        document.apply(simmerpoint.viewer.document.Edit.drop("mirror.slope-error"));
        String changed = document.state().values().sourceText();
        document.apply(kept.from(document.state().given(), document.folder()));
        assertEquals(before, document.readProperty().get().scenario());
        assertTrue(document.state().pending().isNone());
        document.undo();
        assertEquals(changed, document.state().values().sourceText());
    }

    @Test
    void anotherCutComesBackWithItsOwnKeysAndABareDiscToo() throws Exception {
        Scenario before = document.readProperty().get().scenario();
        document.lay(new OpenedFile(
                Optional.empty(),
                ScenarioReader.parse(
                        "other",
                        "dish: {diameter: 1.0 m, focal-length: 0.6 m, surface: {cut: square-tiles, tile: 50 mm}}\n"
                                + "plane: {disc: 20 cm}\n",
                        Path.of(""))));
        KeptDesign disc = KeptDesign.of(document);
        document.apply(kept.from(document.state().given(), document.folder()));
        assertEquals(List.of(), document.state().problems());
        assertEquals(before, document.readProperty().get().scenario());
        document.apply(disc.from(document.state().given(), document.folder()));
        assertEquals(List.of(), document.state().problems());
        assertEquals(disc.read().scenario(), document.readProperty().get().scenario());
    }

    @Test
    void withoutAPairItSaysThatItIsOnItsWay() {
        ComparisonState state = new ComparisonState(
                Optional.of(kept),
                Optional.empty(),
                Optional.of(kept),
                Optional.empty(),
                simmerpoint.viewer.live.PairState.NOTHING_YET);
        assertFalse(state.paired());
        assertTrue(state.sentence(UnitSystem.METRIC).startsWith("Both will be traced"));
        assertEquals("Kept", state.name(true, UnitSystem.METRIC));
        assertFalse(state.settled());
        Variant variant = kept.variant("x");
        assertEquals(kept.read().scenario(), variant.scenario());
    }
}
