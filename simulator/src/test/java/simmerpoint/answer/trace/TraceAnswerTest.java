package simmerpoint.answer.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Item;
import simmerpoint.answer.words.Cautions;
import simmerpoint.heat.HeatLevel;
import simmerpoint.report.SampleResults;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ExampleScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.likely.LikelyStudy;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.units.UnitSystem;

class TraceAnswerTest {
    private static List<Item> items(TraceResult result, int section) {
        return TraceAnswer.of(result, UnitSystem.METRIC).sections().get(section).items();
    }

    private static List<Item> howSure(TraceResult result) {
        return TraceAnswer.of(result, UnitSystem.METRIC).sections().stream()
                .filter(section -> section.heading().equals(Cautions.HOW_SURE))
                .findFirst()
                .orElseThrow()
                .items();
    }

    private static String text(TraceResult result) {
        return TraceAnswer.of(result, UnitSystem.METRIC).toString().replace('\u00a0', ' ');
    }

    @Test
    void theFirstSentenceIsInWatts() {
        String first = items(SampleResults.tight(), 0).get(0).toString().replace('\u00a0', ' ');
        assertTrue(
                first.matches("(?s).*\\b[0-9]+ W go into the water\\. That is the cooking power: the heat left for the "
                        + "water at 70 °C, 50 °C above the air, when air, wind and steam have taken theirs\\..*"),
                first);
        assertTrue(first.contains("takes up 615 W of light, from 651 W of focused sunlight that reach it"), first);
        assertTrue(first.contains("of what a small gas ring on full gives a lidded pot"), first);
    }

    /** A small dish with a wide open pot: at 70 °C vapour alone takes more than it gets. */
    @Test
    void aPanThatCannotHoldFiftyKelvinAboveTheAirIsToldSo() throws Exception {
        String weak = ExampleScenario.text()
                .replace("diameter: 1.20 m", "diameter: 0.60 m")
                .replace("lid: on", "lid: off");
        Scenario scenario = ScenarioReader.parse("weak", weak, Path.of("")).scenario();
        TraceResult result = TraceStudy.run(scenario, TraceOptions.defaults().withRays(1 << 12), Progress.NONE);
        assertTrue(result.useful().value() < 0, result.useful().toString());
        assertTrue(text(result).contains(" W more than it takes up at 70 °C, 50 °C above the air."), text(result));
        assertTrue(!text(result).contains("gas ring"), text(result));
    }

    /** Temperatures of the bottom have the range of such cookers; oil is told with its fire, where it gets hot enough to fry. */
    @Test
    void theBottomHasARangeAndOilItsFire() throws Exception {
        String hot = bottom(ExampleScenario.text());
        assertTrue(hot.matches("(?s).*\\d+ °C in the middle \\(\\d+ to \\d+ °C\\).*"), hot);
        assertTrue(
                hot.matches("(?s).*reach(es)? 180 °C for deep frying(, at the soonest)? after .*Hot oil burns.*"), hot);
        String weak = bottom(ExampleScenario.text().replace("diameter: 1.20 m", "diameter: 0.60 m"));
        assertTrue(weak.contains("too cool for deep frying") && !weak.contains("Hot oil burns"), weak);
    }

    private static String bottom(String file) throws Exception {
        CheckedScenario read = ScenarioReader.parse("t", file, Path.of(""));
        TraceOptions few = TraceOptions.defaults().withRays(1 << 12);
        return text(TraceStudy.run(read.scenario(), few, Progress.NONE)
                        .withLikely(LikelyStudy.run(read, 5, few, Progress.NONE)))
                .replaceAll("\\s+", " ");
    }

    @Test
    void theWallsShareAndTheHottestSpotsPlaceAreTold() {
        String text = text(SampleResults.lopsided());
        assertTrue(text.contains("34 % falls on the wall"), text);
        assertTrue(text.contains("5.5 cm from the middle towards the sun"), text);
    }

    @Test
    void aBareDiscIsNeverCalledAPan() {
        String text = text(SampleResults.disc());
        assertFalse(text.matches("(?s).*\\b(pan|underside|wall|lid)\\b.*"), text);
        assertTrue(text.contains("land on the disc"), text);
    }

    @Test
    void theLargestLossIsNamed() {
        String text = text(SampleResults.wide());
        assertTrue(
                text.matches(
                        "(?s).*the largest loss is [0-9]+ W \\([0-9]+ %\\) that is reflected but goes past the pan.*"),
                text);
    }

    @Test
    void noLightIsSaidInWords() {
        String text = text(SampleResults.dark());
        assertTrue(text.contains("No light from the mirrors reaches the pan"), text);
        assertFalse(text.contains("NaN") || text.contains("Infinity"), text);
    }

    /** The dish turned 6.3° up (that is far more than its tolerance) throws its light beside the pan: it burns there. */
    @Test
    void lightThatMissesThePanIsCautionedOf() throws Exception {
        for (String turn : List.of("6.3°", "12°")) {
            Scenario off = ScenarioReader.parse(
                            "off", ExampleScenario.text().replace("up: 0.5°", "up: " + turn), Path.of(""))
                    .scenario();
            TraceResult result = TraceStudy.run(off, TraceOptions.defaults().withRays(1 << 14), Progress.NONE);
            double underside = result.spot().peakFlux().value();
            assertTrue(!(underside > 8_000), turn + ": " + underside);
            assertTrue(text(result).contains("dry leaves, dry grass and paper catch fire"), text(result));
            assertTrue(text(result).contains("Skin burns within seconds"), text(result));
            assertTrue(TraceSummary.of(result, UnitSystem.METRIC).safety().contains("catch fire"), turn);
        }
    }

    @Test
    void aPanTooHighToCookAtIsSaidSo() throws Exception {
        Scenario high = ScenarioReader.parse(
                        "high", ExampleScenario.text().replace("raise: 0 cm", "raise: 12 cm"), Path.of(""))
                .scenario();
        TraceResult result = TraceStudy.run(high, TraceOptions.defaults().withRays(1 << 12), Progress.NONE);
        assertTrue(text(result).contains("It stands too high to cook at, above 130 cm."), text(result));
    }

    /** Water that boils with less steam than a boil takes is a simmer: time and level say so in one breath. */
    @Test
    void aBoilTooGentleToCountIsExplained() throws Exception {
        Scenario gentle = ScenarioReader.parse(
                        "gentle", ExampleScenario.text().replace("raise: 0 cm", "raise: 12 cm"), Path.of(""))
                .scenario();
        TraceResult result = TraceStudy.run(gentle, TraceOptions.defaults().withRays(1 << 14), Progress.NONE);
        TraceSummary summary = TraceSummary.of(result, UnitSystem.METRIC);
        assertEquals(HeatLevel.SIMMER, summary.level().orElseThrow());
        String minutes = summary.water().orElseThrow().minutes().replace('\u00a0', ' ');
        assertTrue(minutes.matches("comes to the boil in \\d+ to \\d+ min and then simmers"), minutes);
        assertTrue(text(result).contains(minutes), text(result));
        assertTrue(
                text(result).contains("(heat level: simmer, a few bubbles with less steam than a boil)"), text(result));
    }

    @Test
    void missedPrecisionIsACaution() {
        assertTrue(howSure(SampleResults.tight()).stream().noneMatch(Item.Caution.class::isInstance));
        Item first = howSure(SampleResults.imprecise()).get(0);
        assertTrue(first instanceof Item.Caution && first.toString().contains("was not reached"), first.toString());
    }

    /** The bars are the ledger of the result: the nested lines add up to the outline. */
    @Test
    void theBarsCloseTheLedger() {
        double sum = 0;
        double parts = 0;
        double heat = 0;
        boolean absorbed = false;
        for (Item item : items(SampleResults.lopsided(), 2)) {
            Item.Bar bar = (Item.Bar) item;
            sum += bar.depth() == 1 && !absorbed ? bar.share() : 0;
            parts += bar.depth() == 2 ? bar.share() : 0;
            heat += absorbed ? bar.share() : 0;
            absorbed = absorbed || bar.label().equals("taken up by the pan");
        }
        assertEquals(1, sum, 1e-9);
        double caught = SampleResults.lopsided().ledger().caught().value()
                / SampleResults.lopsided().ledger().outline().value();
        assertEquals(caught, parts, 1e-9);
        double outline = SampleResults.lopsided().ledger().outline().value();
        assertEquals(SampleResults.lopsided().heat().orElseThrow().absorbed().total() / outline, heat, 1e-9);
    }

    @Test
    void aTitleCannotSteerTheTerminal() {
        Answer answer = TraceAnswer.of(SampleResults.with("a\u001b[2Jb\nc\u202ed", 0.02, 500), UnitSystem.METRIC);
        assertEquals("a [2Jb c d", answer.title());
    }
}
