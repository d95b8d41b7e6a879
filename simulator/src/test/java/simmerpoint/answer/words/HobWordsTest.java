package simmerpoint.answer.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ring ratings of ENARGAS (1000, 1400, 1800 kcal/h) times 0.49 to 0.52; derived. */
class HobWordsTest {
    private static final double KILOCALORIE_PER_HOUR = 4184.0 / 3600;

    @ParameterizedTest
    @CsvSource({
        "5, less than 5 % of what a small gas ring",
        "176, about 30 % of what a small gas ring",
        "400, about 70 % of what a small gas ring",
        "585, about what a small gas ring",
        "700, between what a small and a medium",
        "820, about what a medium gas ring",
        "940, between what a medium and a large",
        "1060, about what a large gas ring",
        "1300, more than a large gas ring",
        "2650, 2.5 times what a large gas ring",
    })
    void wattsBecomeWordsOfAHob(double watts, String words) {
        String sentence = HobWords.sentence(watts).replace('\u00a0', ' ');
        assertTrue(sentence.contains(words), sentence);
    }

    @ParameterizedTest
    @CsvSource({"0", "-34", "NaN"})
    void noHeatIntoTheWaterIsNotCompared(double watts) {
        assertEquals("", HobWords.sentence(watts));
    }

    @ParameterizedTest
    @CsvSource({"1000, small", "1400, medium", "1800, large"})
    void aRingAtTheMiddleOfItsEfficienciesIsNamed(double kilocaloriesPerHour, String name) {
        String sentence = HobWords.sentence(kilocaloriesPerHour * KILOCALORIE_PER_HOUR * 0.505);
        assertTrue(sentence.contains("about what a " + name + " gas ring"), sentence);
    }
}
