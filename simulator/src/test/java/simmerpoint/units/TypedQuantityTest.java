package simmerpoint.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Conversions by hand from the exact definitions of inch, foot, pound, quart and mile (1959; quart of 57.75 cubic inches). */
class TypedQuantityTest {
    @ParameterizedTest
    @CsvSource({
        "LENGTH, 1.20 m, 47.24 in",
        "LENGTH, 60 mm, 2.362 in",
        "LENGTH, 0 cm, 0 in",
        "LENGTH, 420 m, 1378 ft",
        "LENGTH, -3 cm, -1.181 in",
        "LENGTH, 36 in, 36 in",
        "LENGTH, 3', 3'",
        "TEMPERATURE, 20 °C, 68 °F",
        "TEMPERATURE_DIFFERENCE, 6 K, 10.8 °F",
        "MASS, 1.4 kg, 3.086 lb",
        "WATER, 2 l, 2.113 qt",
        "SPEED, 2 m/s, 4.474 mph",
        "STEAM, 6 kg/(h·m²), 1.229 lb/(h·ft²)",
        "ANGLE, 50°, 50°",
        "SHARE, 3 %, 3 %",
        "COUNT, 24, 24",
        "IRRADIANCE, 850 W/m², 850 W/m²"
    })
    void inInches(Dimension dimension, String typed, String shown) {
        assertEquals(
                shown,
                TypedQuantity.of(typed, dimension)
                        .orElseThrow()
                        .in(UnitSystem.INCH)
                        .text());
    }

    @ParameterizedTest
    @CsvSource({
        "LENGTH, 36 in, 91.44 cm",
        "LENGTH, 2 in, 50.8 mm",
        "LENGTH, 6 1/4 in, 15.88 cm",
        "LENGTH, 3 ft 11 in, 1.194 m",
        "LENGTH, 4 ft, 1.219 m",
        "LENGTH, 0 in, 0 cm",
        "TEMPERATURE, 72 °F, 22.22 °C",
        "TEMPERATURE_DIFFERENCE, 9 °F, 5 K",
        "MASS, 0.9 lb, 0.4082 kg",
        "WATER, 2 cups, 0.4732 l",
        "SPEED, 3 mph, 1.341 m/s",
        "LENGTH, 1.20 m, 1.20 m",
        "TEMPERATURE, 300 K, 300 K"
    })
    void inMetric(Dimension dimension, String typed, String shown) {
        assertEquals(
                shown,
                TypedQuantity.of(typed, dimension)
                        .orElseThrow()
                        .in(UnitSystem.METRIC)
                        .text());
    }

    /** By 1 in = 25.4 mm: 24 cm are 9.449 in, 80 cm 31.496 in. */
    @ParameterizedTest
    @CsvSource({
        "24 cm, 9.45 in",
        "80 cm, 31.5 in",
        "1.20 m, 47.25 in",
        "6 mm, 0.236 in",
        "2.4 mm, 0.0945 in",
        "9.4488 in, 9.4488 in"
    })
    void aMetricLengthHasTheDigitsOfASaw(String typed, String shown) {
        assertEquals(
                shown,
                TypedQuantity.of(typed, Dimension.LENGTH)
                        .orElseThrow()
                        .shownIn(UnitSystem.INCH)
                        .text());
    }

    @Test
    void whatIsShownIsReadBackToFourDigits() {
        TypedQuantity typed = TypedQuantity.of("1.20 m", Dimension.LENGTH).orElseThrow();
        assertEquals(1.2, typed.in(UnitSystem.INCH).si(), 1.2 * 5e-4);
        assertEquals(
                "1.2 m", TypedQuantity.written(1.2, Dimension.LENGTH, "m", 3).text());
        assertEquals(
                "12.5°",
                TypedQuantity.written(Math.toRadians(12.49), Dimension.ANGLE, "°", 1)
                        .text());
        assertEquals(120, typed.in(UnitSystem.METRIC).withNumber(120, 0).number(), 1e-12);
        assertEquals(
                47.244, TypedQuantity.of("1 in", Dimension.LENGTH).orElseThrow().numberOf(1.2), 1e-3);
    }

    @Test
    void whatIsNoQuantityIsNone() {
        assertTrue(TypedQuantity.of("wide", Dimension.LENGTH).isEmpty());
        assertTrue(TypedQuantity.of("5", Dimension.LENGTH).isEmpty());
        assertTrue(TypedQuantity.of("", Dimension.SHARE).isEmpty());
    }
}
