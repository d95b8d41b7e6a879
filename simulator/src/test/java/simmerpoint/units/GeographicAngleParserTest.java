package simmerpoint.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GeographicAngleParserTest {
    private static final String EXAMPLE = "47.3° N";

    /** Sixty minutes to the degree, sixty seconds to the minute: ISO 6709. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "47.3°|47.3",
                "47.3° N|47.3",
                "47.3°N|47.3",
                "47.3 n|47.3",
                "47.3° S|-47.3",
                "-47.3°|-47.3",
                "−47.3 deg|-47.3",
                "47° 18' N|47.3",
                "47°18'S|-47.3",
                "47° 18' 36\" N|47.31",
                "47°18′36″S|-47.31",
                "0° N|0",
                "0|0",
                "-0.0|0",
                "0.8 rad|45.83662361046586"
            })
    void readsLatitudes(String text, double degrees) throws QuantityException {
        assertEquals(Math.toRadians(degrees), GeographicAngleParser.latitude(text, EXAMPLE), 1e-15);
    }

    @ParameterizedTest
    @CsvSource({"8.5° E, 8.5", "8.5° W, -8.5", "-8.5°, -8.5", "122°30'W, -122.5", "0, 0", "0.00, 0"})
    void readsLongitudes(String text, double degrees) throws QuantityException {
        assertEquals(Math.toRadians(degrees), GeographicAngleParser.longitude(text, EXAMPLE), 1e-15);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "47.3|47.3 has no unit",
                "47.3° E|47.3° E is not a latitude, which ends in N or S",
                "-47.3° S|has a sign and a letter",
                "47° 60' N|minutes or seconds of 60 or more",
                "47° 10' 75\" N|minutes or seconds of 60 or more",
                "47,3°|write 47.3°",
                "47.3 m|is not an angle",
                "north|is not an angle",
                "``|there is nothing here",
                "47° 18 N|more than one quantity"
            })
    void saysWhatIsWrong(String text, String words) {
        QuantityException e =
                assertThrows(QuantityException.class, () -> GeographicAngleParser.latitude(text, EXAMPLE));
        assertTrue(e.getMessage().contains(words), e.getMessage());
    }
}
