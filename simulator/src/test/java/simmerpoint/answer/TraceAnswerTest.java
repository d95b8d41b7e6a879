package simmerpoint.answer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import simmerpoint.report.SampleResults;
import simmerpoint.study.TraceResult;
import simmerpoint.units.UnitSystem;

class TraceAnswerTest {
    private static List<Item> items(TraceResult result, int section) {
        return TraceAnswer.of(result, UnitSystem.METRIC).sections().get(section).items();
    }

    private static String text(TraceResult result) {
        return TraceAnswer.of(result, UnitSystem.METRIC).toString().replace('\u00a0', ' ');
    }

    @Test
    void theFirstSentenceIsInWatts() {
        String first = items(SampleResults.tight(), 0).get(0).toString().replace('\u00a0', ' ');
        assertTrue(first.contains("651 W of focused sunlight reach the pan"), first);
        assertTrue(first.contains("(black enamel) takes up 615 W in all"), first);
        assertTrue(first.contains("about what a small gas ring gives a pot"), first);
    }

    @Test
    void theWallsShareAndTheHottestSpotsPlaceAreTold() {
        String text = text(SampleResults.lopsided());
        assertTrue(text.contains("34 % climbs the wall"), text);
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

    @Test
    void missedPrecisionIsACaution() {
        assertTrue(items(SampleResults.tight(), 4).stream().noneMatch(Item.Caution.class::isInstance));
        Item first = items(SampleResults.imprecise(), 4).get(0);
        assertTrue(first instanceof Item.Caution && first.toString().contains("was not reached"), first.toString());
    }

    /** The bars are the ledger of the result: the nested lines add up to the outline. */
    @Test
    void theBarsCloseTheLedger() {
        double sum = 0;
        double parts = 0;
        for (Item item : items(SampleResults.lopsided(), 2)) {
            Item.Bar bar = (Item.Bar) item;
            sum += bar.depth() == 1 ? bar.share() : 0;
            parts += bar.depth() == 2 ? bar.share() : 0;
        }
        assertEquals(1, sum, 1e-9);
        double caught = SampleResults.lopsided().ledger().caught().value()
                / SampleResults.lopsided().ledger().outline().value();
        assertEquals(caught, parts, 1e-9);
    }

    @Test
    void aTitleCannotSteerTheTerminal() {
        Answer answer = TraceAnswer.of(SampleResults.with("a\u001b[2Jb\nc\u202ed", 0.02, 500), UnitSystem.METRIC);
        assertEquals("a [2Jb c d", answer.title());
    }
}
