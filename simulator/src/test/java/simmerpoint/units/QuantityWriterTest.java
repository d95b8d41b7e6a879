package simmerpoint.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityWriterTest {
    @ParameterizedTest
    @CsvSource({
        "0.0123, 12 mm",
        "0.24, 24 cm",
        "1.2, 1.2 m",
        "1.234, 1.23 m",
        "0.0012, 1.2 mm",
        "0, 0 mm",
        "-0.1, -10 cm",
        "0.123, 12.3 cm",
        "0.9144, 91.4 cm",
        "0.09999, 10 cm",
        "0.9999, 1 m",
        "123.4, 123.4 m",
        "NaN, unknown"
    })
    void lengthsInTheUnitThatSuitsTheirSize(double metres, String text) {
        assertEquals(text, QuantityWriter.length(metres));
    }

    @Test
    void otherQuantities() {
        assertEquals("50°", QuantityWriter.degrees(Math.toRadians(50)));
        assertEquals("4.65 mrad", QuantityWriter.milliradians(0.00465));
        assertEquals("0.25°", QuantityWriter.degrees(Math.toRadians(0.25)));
        assertEquals("85 %", QuantityWriter.share(0.85));
    }
}
