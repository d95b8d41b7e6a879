package simmerpoint.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.sampling.Estimate;

class QuantityWriterTest {
    private static final QuantityWriter METRIC = new QuantityWriter(UnitSystem.METRIC);
    private static final QuantityWriter INCH = new QuantityWriter(UnitSystem.INCH);

    @ParameterizedTest
    @CsvSource({
        "0.0123, 12 mm, 0.48 in", "0.24, 24 cm, 9.45 in", "1.2, 1.2 m, 47.2 in", "1.234, 1.23 m, 48.6 in",
        "0.0012, 1.2 mm, 0.047 in", "0, 0 mm, 0 in", "-0.1, -10 cm, -3.94 in", "0.123, 12.3 cm, 4.84 in",
        "0.9144, 91.4 cm, 36 in", "0.09999, 10 cm, 3.94 in", "0.9999, 1 m, 39.4 in", "123.4, 123.4 m, 4858.3 in",
        "NaN, unknown, unknown"
    })
    void lengthsInTheUnitThatSuitsTheirSize(double metres, String metric, String inch) {
        assertEquals(metric, METRIC.length(metres));
        assertEquals(inch, INCH.length(metres));
    }

    @ParameterizedTest
    @CsvSource({
        "623.4, 2.1, 623 W ± 2 W", "623.4, 1.4, 623.4 W ± 1.4 W", "623.4, 0.96, 623.4 W ± 1.0 W", "623.4, 0, 623 W",
        "6234, 230, 6200 W ± 200 W", "6234, 150, 6230 W ± 150 W", "0.2, 3, 0 W ± 3 W", "-0.2, 3, 0 W ± 3 W",
        "12345, 20, 12.35 kW ± 0.02 kW", "NaN, 1, unknown", "623, Infinity, 623 W ± unknown", "0, 0, 0 W",
        "99.96, 0.2, 100.0 W ± 0.2 W"
    })
    void wattsWithTheDigitsTheirErrorDeserves(double watts, double error, String text) {
        assertEquals(text, METRIC.watts(new Estimate(watts, error)));
    }

    @Test
    void lengthsWithError() {
        assertEquals("41.9 mm ± 0.3 mm", METRIC.length(new Estimate(0.04187, 0.0003)));
        assertEquals("1.648 in ± 0.012 in", INCH.length(new Estimate(0.04187, 0.0003)));
    }

    @Test
    void otherQuantities() {
        assertEquals("50°", METRIC.angle(Math.toRadians(50)));
        assertEquals("4.65 mrad", METRIC.angle(0.00465));
        assertEquals("0.25°", METRIC.degrees(Math.toRadians(0.25)));
        assertEquals("85 %", METRIC.share(0.85));
        assertEquals("79.98 % ± 0.02 %", METRIC.share(new Estimate(0.79977, 0.0002)));
        assertEquals("850 W/m²", METRIC.irradiance(850));
        assertEquals("45.2 kW/m²", METRIC.irradiance(45210));
        assertEquals("45.2 kW/m² ± 0.3 kW/m²", METRIC.irradiance(new Estimate(45210, 300)));
        assertEquals("1.12 m²", METRIC.area(1.1153));
        assertEquals("12 ft²", INCH.area(1.1153));
        assertEquals("948 W", METRIC.watts(948.04));
    }

    @Test
    void exactFiguresForFiles() {
        assertEquals("12.345678 mm", METRIC.exactLength(0.012345678));
        assertEquals("1.2 m", METRIC.exactLength(1.2));
        assertEquals("36 in", INCH.exactLength(0.9144));
        assertEquals("4.65 mrad", METRIC.exactAngle(0.00465, "mrad"));
    }
}
