package simmerpoint.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import simmerpoint.study.PanResult;
import simmerpoint.study.PanScenes;
import simmerpoint.units.UnitSystem;

class PanAnswerTest {
    private static PanResult tea;
    private static PanResult tiny;
    private static PanResult huge;

    @BeforeAll
    static void study() {
        tea = PanScenes.study(PanScenes.rings(50, 850));
        tiny = PanScenes.study(PanScenes.smooth(0.3, 0.4, 600));
        huge = PanScenes.study(PanScenes.smooth(2.4, 1.2, 1000));
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
                        "[0-9]+ W go into the pan where it stands, its middle at the focus: the water boils\\. Its "
                                + "2\\.0 l of water \\(20 °C at the start\\) boils in [0-9]+ to [0-9]+ min\\..*"),
                text);
    }

    @Test
    void theSimmerIsInCentimetresAndInches() {
        assertTrue(
                metric(tea)
                        .matches("(?s).*For a simmer with the least hot spot [a-z ]+ by [0-9.]+ cm \\([0-9.]+ in\\).*"),
                metric(tea));
        String inch = text(tea, UnitSystem.INCH);
        assertTrue(
                inch.matches("(?s).*For a simmer with the least hot spot [a-z ]+ by [0-9.]+ in \\([0-9.]+ cm\\).*"),
                inch);
        assertTrue(inch.contains("68 °F at the start"), inch);
    }

    /** Common practice: 5 cm apart is said to go from frying to a low heat; for this pan and dish it does not. */
    @Test
    void theHabitOfFiveCentimetresIsContradictedWithAReason() {
        assertTrue(metric(tea).contains("So the habit does not hold: 5.0 cm widen the light"), metric(tea));
        assertTrue(metric(tea).contains("A slide does not soften the hot spot"), metric(tea));
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
