package simmerpoint.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Both from the same length: an inch is 25.4 mm. */
class SawLengthTest {
    @ParameterizedTest
    @CsvSource({
        "0.6124, 612 mm, 24 1/8 in",
        "0.0254, 25 mm, 1 in",
        "0.0127, 13 mm, 1/2 in",
        "0.0016, 2 mm, 1/16 in",
        "0, 0 mm, 0 in",
        "-0.01905, −19 mm, −3/4 in"
    })
    void lengthsAreReadOffARule(double metres, String metric, String inches) {
        assertEquals(metric, SawLength.text(metres, UnitSystem.METRIC).replace('\u00a0', ' '));
        assertEquals(inches, SawLength.text(metres, UnitSystem.INCH).replace('\u00a0', ' '));
    }
}
