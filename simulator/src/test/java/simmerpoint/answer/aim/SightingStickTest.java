package simmerpoint.answer.aim;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.units.UnitSystem;

/** The shadow's tip lies stick times tan(angle) from the foot. */
class SightingStickTest {
    @ParameterizedTest
    @CsvSource({
        "METRIC, 0.1, 2, ': with a stick 10 cm long, bring the shadow’s tip within 3.5 mm of its foot.'",
        "METRIC, 0.1, 0.72, '. A stick 10 cm long is too short to see that by: with one 20 cm long, bring the shadow’s tip within 2.5 mm'",
        "INCH, 0.1016, 0.4, '. A stick 4 in long is too short to see that by: with one 16 in long'",
        "METRIC, 0.1, 0.05, '. A stick 10 cm long is too short to see that by: with one 100 cm long'",
        "METRIC, 1.5, 0.05, 'of its foot. That is hard to see.'",
    })
    void aStickTooShortNamesALongerOne(UnitSystem system, double stick, double degrees, String words) {
        String said = SightingStick.words(stick, Math.toRadians(degrees), new FigureFormat(system))
                .replace('\u00a0', ' ');
        assertTrue(said.contains(words), said);
    }
}
