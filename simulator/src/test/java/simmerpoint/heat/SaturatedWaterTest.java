package simmerpoint.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.heat.balance.PotModel;

class SaturatedWaterTest {
    /** IAPWS R7-97 (2012), table 35 (from memory). */
    @ParameterizedTest
    @CsvSource({"300, 0.00353658941", "500, 2.63889776", "600, 12.3443146"})
    void saturationPressureIsThatOfTheStandard(double kelvin, double megapascals) {
        assertEquals(megapascals, SaturatedWater.saturationPascals(kelvin) / 1e6, 1e-8 * megapascals);
    }

    /** IAPWS R7-97 (2012), table 36 (from memory). */
    @ParameterizedTest
    @CsvSource({"0.1, 372.755919", "1, 453.035632", "10, 584.149488"})
    void saturationTemperatureIsThatOfTheStandard(double megapascals, double kelvin) {
        assertEquals(kelvin, SaturatedWater.saturationKelvin(megapascals * 1e6), 1e-6);
    }

    /** Steam tables, kPa, within 0.1 %: values of the same standard coded apart from this project. */
    @ParameterizedTest
    @CsvSource({"20, 2.3392", "60, 19.9458", "80, 47.4147", "90, 70.1824", "95, 84.6089", "100, 101.418"})
    void saturationPressureIsThatOfSteamTables(double celsius, double kilopascals) {
        assertEquals(kilopascals, SaturatedWater.saturationPascals(celsius + 273.15) / 1000, 1e-3 * kilopascals);
    }

    /** Steam tables (from memory), kJ/kg; 2257 at 100 °C is in every handbook. */
    @ParameterizedTest
    @CsvSource({"20, 2453.5", "60, 2357.7", "80, 2308.0", "90, 2282.5", "100, 2257"})
    void latentHeatIsThatOfSteamTables(double celsius, double kilojoules) {
        assertEquals(kilojoules, SaturatedWater.latentHeatJoulesPerKilogram(celsius) / 1000, 5e-4 * kilojoules);
    }

    /**
     * Clausius and Clapeyron with an ideal gas, L = R T² p′/p (derived): the gas's own volume and the liquid's make that up
     * to 1.6 % too much at 100 °C, a twentieth of that at 20 °C.
     */
    @ParameterizedTest
    @CsvSource({"20, 0.003", "60, 0.01", "100, 0.02"})
    void latentHeatFitsTheSlopeOfTheSaturationLine(double celsius, double tolerance) {
        double t = celsius + 273.15;
        double slope = (Math.log(SaturatedWater.saturationPascals(t + 0.01))
                        - Math.log(SaturatedWater.saturationPascals(t - 0.01)))
                / 0.02;
        double ideal = 8314.46 / 18.01528 * t * t * slope;
        assertEquals(1, ideal / SaturatedWater.latentHeatJoulesPerKilogram(celsius), tolerance);
    }

    /** 100 W boil away 0.159540 kg/h at 2256.5 kJ/kg, 1 kg/h needs 626.8 W (derived). */
    @Test
    void wattsBoilAwayWater() {
        assertEquals(0.159540, 3600 * PotModel.steamRate(100, 100), 1e-3 * 0.159540);
        assertEquals(1, 3600 * PotModel.steamRate(626.806, 100), 1e-3);
    }

    @Test
    void bothDirectionsAgreeAndFrostHasAnAnswer() {
        for (double t = 274; t < 647; t += 7) {
            assertEquals(t, SaturatedWater.saturationKelvin(SaturatedWater.saturationPascals(t)), 1e-6 * t);
        }
        double before = 0;
        for (double t = 230; t < 280; t += 1) {
            double now = SaturatedWater.saturationPascals(t);
            assertTrue(now > before, "at " + t + " K");
            before = now;
        }
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> SaturatedWater.saturationPascals(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> SaturatedWater.saturationKelvin(10));
        assertThrows(IllegalArgumentException.class, () -> SaturatedWater.latentHeatJoulesPerKilogram(Double.NaN));
    }
}
