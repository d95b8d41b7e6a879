package simmerpoint.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.units.UnitSystem;

class GlanceTest {
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
        Glance glance = Glance.of(result, system);
        String whole = allWords(result, system);
        assertTrue(whole.contains(glance.watts() + " " + glance.meaning() + ". Its outside "), whole);
        assertTrue(whole.contains(glance.certainty()), whole);
        Glance.Water water = glance.water().orElseThrow();
        assertTrue(whole.contains(water.minutes()) && whole.contains(water.amount()), whole);
        assertTrue(whole.contains(water.levelSentence()), whole);
        assertTrue(water.levelSentence().contains(LevelWords.of(glance.level().orElseThrow())));
        String loss = glance.largestLoss().replace("Largest loss: ", "the largest loss is ");
        assertTrue(whole.contains(loss), whole);
        for (String sentence : glance.safety().split("(?<=\\.) ")) {
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
        Glance glance = Glance.of(result, UnitSystem.METRIC);
        assertEquals("of focused sunlight land on the disc", glance.meaning());
        assertTrue(glance.level().isEmpty() && glance.water().isEmpty());
        assertTrue(allWords(result, UnitSystem.METRIC).contains(glance.watts() + " " + glance.meaning()));
    }
}
