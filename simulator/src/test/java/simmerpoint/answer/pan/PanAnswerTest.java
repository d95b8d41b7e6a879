package simmerpoint.answer.pan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import simmerpoint.answer.Answer;
import simmerpoint.answer.Item;
import simmerpoint.answer.trace.TraceAnswer;
import simmerpoint.answer.words.FryingWords;
import simmerpoint.scenario.GroundHeights;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.pan.MoveStudy;
import simmerpoint.study.pan.PanResult;
import simmerpoint.study.pan.PanScenarios;
import simmerpoint.units.UnitSystem;

class PanAnswerTest {
    private static PanResult tea;
    private static PanResult tiny;
    private static PanResult huge;

    @BeforeAll
    static void study() {
        tea = PanScenarios.study(PanScenarios.rings(50, 850));
        tiny = PanScenarios.study(PanScenarios.smooth(0.3, 0.4, 600));
        huge = PanScenarios.study(PanScenarios.smooth(2.4, 1.2, 1000));
    }

    private static String text(PanResult result, UnitSystem system) {
        return PanAnswer.of(result, system).toString().replace('\u00a0', ' ');
    }

    private static String metric(PanResult result) {
        return text(result, UnitSystem.METRIC);
    }

    @Test
    void theFirstSentenceHasWattsWhatTheWaterDoesAndMinutes() {
        Item first =
                PanAnswer.of(tea, UnitSystem.METRIC).sections().get(0).items().get(0);
        String text = ((Item.Sentence) first).text().replace('\u00a0', ' ');
        assertTrue(
                text.matches(
                        "[0-9]+ W go into the water where the pan stands, its middle at the focus: the water boils\\. Its "
                                + "2 l of water \\(20 °C at the start\\) boils in [0-9]+ to [0-9]+ min\\..*"),
                text);
    }

    @Test
    void theSimmerIsInCentimetresAndInches() {
        assertTrue(
                metric(tea).matches("(?s).*For a simmer with the least hot spot [a-z ]+ by [0-9.]+ cm, .*"),
                metric(tea));
        String inch = text(tea, UnitSystem.INCH);
        assertTrue(
                inch.matches("(?s).*For a simmer with the least hot spot [a-z ]+ by [0-9]+(\u00a0| )?[0-9/]* in, .*"),
                inch);
        assertTrue(inch.contains("68 °F at the start"), inch);
    }

    /** Common practice: 5 cm apart is said to go from frying to a low heat; for this pan and dish it does not. */
    @Test
    void theHabitOfFiveCentimetresIsContradictedWithAReason() {
        assertTrue(metric(tea).contains("So the rule of thumb does not hold: 5.0 cm widen the light"), metric(tea));
        assertTrue(metric(tea).contains("A slide does not soften the hot spot"), metric(tea));
    }

    /** A border of a level stands on the right side of every place in the table beside it, as both are shown. */
    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void bordersAndTableAgree(UnitSystem system) {
        int seen = 0;
        for (PanResult result : new PanResult[] {tea, tiny, huge}) {
            for (int k = 0; k < result.moves().size(); k++) {
                List<Item> items =
                        PanAnswer.of(result, system).sections().get(3 + k).items();
                List<Item.Figure> from = items.stream()
                        .filter(item ->
                                item instanceof Item.Figure f && f.label().startsWith("from "))
                        .map(Item.Figure.class::cast)
                        .toList();
                for (List<String> row : ((Item.Table) items.get(items.size() - 1)).rows()) {
                    String level = "";
                    for (Item.Figure figure : from) {
                        if (number(figure.label().substring(5)) <= number(row.get(0))) {
                            level = figure.value().replaceAll(";.*", "");
                        }
                    }
                    assertEquals(row.get(3), level, row + " of " + from);
                    seen++;
                }
            }
        }
        assertTrue(seen >= 3 * 3 * 5, seen + " rows");
    }

    private static double number(String length) {
        String plain = length.replaceAll("\u00a0(cm|in)$", "").replace('\u2212', '-');
        double size = 0;
        for (String part : plain.replace("-", "").split("\u00a0")) {
            String[] fraction = part.split("/");
            size += Double.parseDouble(fraction[0]) / (fraction.length > 1 ? Double.parseDouble(fraction[1]) : 1);
        }
        return plain.startsWith("-") ? -size : size;
    }

    @Test
    @Tag("slow")
    void theSimmerKeepsToHeightsAtWhichOneCanCook() {
        Scenario scenario = tea.base().scenario();
        double height = scenario.panHeightMetres();
        PanResult narrow = PanScenarios.study(in(scenario, new GroundHeights(0.6, height - 0.01, height + 0.01)));
        assertEquals(MoveStudy.Move.SLIDE, narrow.simmer().orElseThrow().move());
        assertFalse(metric(narrow).contains("to cook at"), metric(narrow));
        PanResult low = PanScenarios.study(in(scenario, new GroundHeights(0.6, 0.1, 0.2)));
        assertTrue(
                metric(low)
                        .matches(
                                "(?s).*\\. But there it stands too high to cook at, above 20 cm \\([0-9]+ cm above the "
                                        + "ground\\), and no place for a simmer along these moves is in reach\\..*"),
                metric(low));
        assertTrue(metric(low).contains("The pan stands too high to cook at, above 20 cm ("), metric(low));
    }

    private static Scenario in(Scenario s, GroundHeights ground) {
        return new Scenario(
                s.title(),
                s.dish(),
                s.mirror(),
                s.sun(),
                s.aim(),
                s.target(),
                s.stand(),
                s.cooking(),
                s.site(),
                ground);
    }

    @Test
    void aMoveThatCostsNothingIsSaidToCostNothing() {
        assertTrue(
                metric(tea)
                        .matches(
                                "(?s).*Sliding the dish back by 5 cm \\(2 in\\) brings more heat, [0-9]+ W instead of.*"),
                metric(tea));
        String text = metric(PanScenarios.study(ScenarioReader.builtIn().scenario()));
        assertTrue(
                text.matches(
                        "(?s).*Sliding the dish back by 5 cm \\(2 in\\) costs (next to )?no heat, [0-9]+ W go into the water instead of.*"),
                text);
    }

    /** 42 W are less than half of the 100 W that keep a small lidded pot simmering: nothing is fried, and nothing scorches. */
    @Test
    void tooWeakAPanNeitherFriesNorScorches() {
        PanResult weak = PanScenarios.study(PanScenarios.smooth(0.3, 0.3, 600));
        assertTrue(weak.here().absorbed().value() < 60, weak.here().absorbed().toString());
        String text = metric(weak);
        assertTrue(text.contains("too little to fry, wherever the light falls"), text);
        assertTrue(text.contains("too weak to scorch food"), text);
        assertFalse(text.contains("burns food"), text);
        assertEquals("in one place more than elsewhere, too weakly to burn food", FryingWords.heats(weak.base()));
        assertTrue(FryingWords.heats(tea.base()).contains("which burns food in one place"));
    }

    @Test
    void neverBoilsIsSaidWithATemperature() {
        String text = metric(tiny);
        assertTrue(text.matches("(?s).*never boils: settles at [0-9]+ °C.*"), text);
        assertTrue(text.contains("It never simmers: at the best place"), text);
        assertFalse(text.contains("For a simmer with"), text);
    }

    @Test
    void aFierceDishIsToldToCoverItsMirror() {
        String text = metric(huge);
        assertTrue(text.contains("the water boils hard"), text);
        assertTrue(text.matches("(?s).*cover part of the mirror: with about [0-9]+ % of it covered.*"), text);
    }

    @Test
    void nothingIsNotANumber() {
        for (PanResult result : new PanResult[] {tea, tiny, huge}) {
            for (UnitSystem system : UnitSystem.values()) {
                String text = text(result, system);
                assertFalse(text.contains("NaN") || text.contains("Infinity") || text.contains("unknown"), text);
            }
        }
    }

    /** The first section of trace says the same minutes as pan. */
    @Test
    void traceAndPanAgree() {
        String trace = TraceAnswer.of(tea.base(), UnitSystem.METRIC)
                .sections()
                .get(0)
                .toString()
                .replace('\u00a0', ' ');
        String minutes = trace.replaceAll("(?s).*(boils in [0-9]+ to [0-9]+ min).*", "$1");
        assertTrue(minutes.startsWith("boils in ") && minutes.length() < 30, trace);
        assertTrue(metric(tea).contains(minutes), minutes);
        assertTrue(trace.contains("heat level: boil"), trace);
    }

    @Test
    void sectionsComeInTheCooksOrder() {
        Answer answer = PanAnswer.of(tea, UnitSystem.METRIC);
        assertEquals(
                "What the pan gets where it stands", answer.sections().get(0).heading());
        assertEquals("Where to put the pan", answer.sections().get(1).heading());
        assertTrue(answer.sections().get(2).items().stream().allMatch(Item.Caution.class::isInstance));
    }
}
