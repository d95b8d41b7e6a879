package simmerpoint.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoilingPointTest {
    /** Standard atmosphere of ISO 2533 with the saturation line of IAPWS-IF97, worked out apart from this project. */
    @ParameterizedTest
    @CsvSource({
        "0, 101325, 99.9743",
        "500, 95460.9, 98.3125",
        "1000, 89874.8, 96.6488",
        "1500, 84556.3, 94.9831",
        "1600, 83523.8, 94.6497",
        "2000, 79495.5, 93.3152",
        "2500, 74682.9, 91.6450",
        "3000, 70109.0, 89.9725",
        "4000, 61640.8, 86.6195",
        "5000, 54020.5, 83.2552"
    })
    void fallsWithAltitudeAsTheStandardsSay(double metres, double pascals, double celsius) {
        // The last digits of the gas constant move the exponent from 5.25588 to 5.25579: 1.1e-5 at 5000 m.
        assertEquals(pascals, BoilingPoint.pressurePascals(metres), 2e-5 * pascals);
        assertEquals(celsius, BoilingPoint.celsius(metres), 0.001);
    }

    /** A popular table of kitchens at altitude, read without its source named: 96.5, 93.1, 89.8, 86.5, 83.2 °C. */
    @ParameterizedTest
    @CsvSource({"1000, 96.5", "2000, 93.1", "3000, 89.8", "4000, 86.5", "5000, 83.2", "1600, 95"})
    void isNearWhatCooksAreTold(double metres, double celsius) {
        assertEquals(celsius, BoilingPoint.celsius(metres), 0.4);
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> BoilingPoint.celsius(Double.NaN));
    }
}
