package simmerpoint.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A ± is two standard deviations; the numbers are worked out by hand. */
class PlusMinusTest {
    @ParameterizedTest
    @CsvSource({
        "SHARE, 0.85 ± 0.03, 0.85, 0.015",
        "SHARE, 0.85±0.03, 0.85, 0.015",
        "SHARE, 0.85 +- 0.03, 0.85, 0.015",
        "SHARE, 0.85+/-0.03, 0.85, 0.015",
        "SHARE, 85 % ± 3 %, 0.85, 0.015",
        "SHARE, 0.85 ± 3 %, 0.85, 0.015",
        "LENGTH, 1.20 m ± 1 cm, 1.2, 0.005",
        "LENGTH, 1.20 ± 0.01 m, 1.2, 0.005",
        "LENGTH, 1.20 m ± 0.01, 1.2, 0.005",
        "LENGTH, 36 in ± 1/16, 0.9144, FAILS",
        "LENGTH, -3 cm ± 5 mm, -0.03, 0.0025",
        "IRRADIANCE, 850 W/m² ± 5 %, 850, 21.25",
        "NUMBER, 3.2 ± 10 %, 3.2, 0.16",
        "NUMBER, 3.2 ± 0.5, 3.2, 0.25",
        "TEMPERATURE, 20 °C ± 2 °C, 293.15, 1",
        "TEMPERATURE, 20 °C ± 2, 293.15, 1",
        "TEMPERATURE, 20 °C ± 9 °F, 293.15, 2.5",
        "TEMPERATURE, 20 °C ± 5 %, 293.15, FAILS",
        "LENGTH, 1 m ± -2 cm, 1, FAILS",
        "LENGTH, 1 m ± 2 kg, 1, FAILS",
        "LENGTH, 1 m ±, 1, NONE",
        "ANGLE, 0.5°, 0.0087266462599716, NONE"
    })
    void readsValueAndDeviation(Dimension dimension, String typed, double value, String deviation) throws Exception {
        PlusMinus parts = PlusMinus.split(typed);
        assertEquals(value, QuantityParser.parse(parts.value(), dimension), 1e-12);
        if (deviation.equals("FAILS")) {
            assertThrows(QuantityException.class, () -> parts.deviation(dimension, value));
        } else if (deviation.equals("NONE")) {
            assertTrue(parts.deviation(dimension, value).isEmpty());
        } else {
            assertEquals(
                    Double.parseDouble(deviation),
                    parts.deviation(dimension, value).orElseThrow(),
                    1e-12);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "LENGTH, 1.20 m ± 1 cm, 47.24 in ± 0.39 in",
        "TEMPERATURE, 20 °C ± 2 °C, 68 °F ± 3.6 °F",
        "SHARE, 0.85 ± 0.03, 0.85 ± 0.03",
        "LENGTH, 1.20 m ± 5 %, 47.24 in ± 5 %"
    })
    void inInches(Dimension dimension, String typed, String shown) {
        assertEquals(
                shown,
                TypedQuantity.of(typed, dimension)
                        .orElseThrow()
                        .in(UnitSystem.INCH)
                        .text());
    }

    @Test
    void staysWhileTheNumberIsMoved() {
        TypedQuantity reflectance =
                TypedQuantity.of("0.85 ± 0.03", Dimension.SHARE).orElseThrow();
        assertEquals("0.9 ± 0.03", reflectance.withNumber(0.9, 2).text());
        TypedQuantity length = TypedQuantity.of("80 ± 1 cm", Dimension.LENGTH).orElseThrow();
        assertEquals("82 cm ± 1 cm", length.withNumber(82, 0).text());
        assertFalse(PlusMinus.split("-3 cm").isGiven());
    }
}
