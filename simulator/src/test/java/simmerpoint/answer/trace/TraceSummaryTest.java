package simmerpoint.answer.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import simmerpoint.answer.Item;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.units.UnitSystem;

class TraceSummaryTest {
    private static final TraceOptions FEW = TraceOptions.defaults().withRays(1 << 12);

    private static String allWords(TraceResult result, UnitSystem system) {
        return TraceAnswer.of(result, system).sections().stream()
                .flatMap(section -> section.items().stream())
                .map(Item::toString)
                .collect(Collectors.joining("\n"));
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void everyWordStandsInTheWholeAnswerToo(UnitSystem system) {
        TraceResult result = TraceStudy.run(ScenarioReader.builtIn().scenario(), FEW, Progress.NONE);
        TraceSummary summary = TraceSummary.of(result, system);
        String whole = allWords(result, system);
        assertTrue(whole.contains(summary.watts() + " " + summary.meaning() + ". That is the cooking power"), whole);
        assertTrue(whole.contains(summary.certainty()), whole);
        TraceSummary.Water water = summary.water().orElseThrow();
        assertTrue(whole.contains(water.minutes()) && whole.contains(water.amount()), whole);
        assertTrue(
                whole.contains("(heat level: " + LevelWords.of(summary.level().orElseThrow())), whole);
        String loss = summary.largestLoss().replace("Largest loss: ", "the largest loss is ");
        assertTrue(whole.contains(loss), whole);
        for (String sentence : summary.safety().split("(?<=\\.) ")) {
            assertTrue(whole.contains(sentence), sentence);
        }
    }

    @Test
    void aDiscHasWattsAndNoWater() throws Exception {
        CheckedScenario disc = ScenarioReader.parse(
                "disc",
                "dish: {diameter: 1.2 m, focal-length: 0.8 m, surface: {cut: smooth}}\nplane: {disc: 20 cm}\n",
                Path.of(""));
        TraceResult result = TraceStudy.run(disc.scenario(), FEW, Progress.NONE);
        TraceSummary summary = TraceSummary.of(result, UnitSystem.METRIC);
        assertEquals("of focused sunlight land on the disc", summary.meaning());
        assertTrue(summary.level().isEmpty() && summary.water().isEmpty());
        assertTrue(allWords(result, UnitSystem.METRIC).contains(summary.watts() + " " + summary.meaning()));
    }
}
