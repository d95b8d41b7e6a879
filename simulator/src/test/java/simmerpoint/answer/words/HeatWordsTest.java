package simmerpoint.answer.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.uncertainty.LikelyRange;
import simmerpoint.units.UnitSystem;

class HeatWordsTest {
    private static final HeatWords METRIC = new HeatWords(UnitSystem.METRIC);
    private static final HeatWords INCH = new HeatWords(UnitSystem.INCH);

    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }

    @ParameterizedTest
    @CsvSource({
        "1680, 1800, 1980, 28 to 33 min",
        "1790, 1800, 1810, about 30 min",
        "10, 15, 20, less than a minute",
        "3600, 7200, 10800, 1 h to 3 h",
        "7800, 9000, 86400, 2 h 10 min to a day or longer",
    })
    void minutes(double low, double likely, double high, String words) {
        String text = plain(HeatWords.minutes(new LikelyRange(low, likely, high)));
        assertEquals(words.replace("1 h to", "60 min to"), text);
    }

    @Test
    void temperaturesInBothSystems() {
        assertEquals("83 °C (78 to 88 °C)", plain(METRIC.temperature(new LikelyRange(78, 83, 88))));
        assertEquals("181 °F (172 to 190 °F)", plain(INCH.temperature(new LikelyRange(78, 83, 88))));
        assertEquals("100 °C", plain(METRIC.temperature(LikelyRange.exact(99.97))));
        assertEquals("9 to 18 °F", plain(INCH.difference(new LikelyRange(5, 7, 10))));
    }

    /** A US quart is 0.946 352 946 l exactly (231 cubic inches ÷ 4). */
    @Test
    void waterInLitresAndQuarts() {
        assertEquals("2 l of water", plain(METRIC.water(2)));
        assertEquals("2.1 quarts of water", plain(INCH.water(2)));
    }

    @Test
    void boilingOrNot() {
        LikelyRange settles = new LikelyRange(78, 83, 88);
        assertEquals(
                "boils in 28 to 33 min",
                plain(METRIC.boil(new BoilingOutcome.Boils(new LikelyRange(1680, 1800, 1980)))));
        assertEquals(
                "never boils: settles at 83 °C (78 to 88 °C)", plain(METRIC.boil(new BoilingOutcome.Never(settles))));
        String may = plain(METRIC.boil(new BoilingOutcome.MayBoil(0.5, OptionalDouble.empty(), 3600, settles)));
        assertEquals(
                "may or may not boil: with little wind it boils in 60 min or somewhat later, with more it settles at 78 °C",
                may);
    }
}
