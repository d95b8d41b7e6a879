package simmerpoint.workshop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Wind by ½ρv²·c·A and a balance of moments, worked out by hand for these figures. */
class WindLoadTest {
    private static final double AREA = Math.PI * 0.36;

    @ParameterizedTest
    @CsvSource({"5, 24.59", "8, 62.95", "10, 98.37", "15, 221.32"})
    void pushesWithTheSquareOfItsSpeed(double speed, double newtons) {
        assertEquals(newtons, WindLoad.of(AREA, 1, 12, 3, 0.5).force(speed), 0.01);
    }

    @ParameterizedTest
    @CsvSource({"0.5, 1.0, 3, 5.4689", "0.5, 1.0, 4, 6.5036", "0.6, 0.9, 3, 6.3149", "0.6, 0.9, 4, 7.5097"})
    void tipsOverTwoFeet(double radius, double height, int feet, double speed) {
        assertEquals(speed, WindLoad.of(AREA, height, 12, feet, radius).tippingSpeed(), 1e-4);
    }

    @ParameterizedTest
    @CsvSource("8, 25.678")
    void moreMassStandsMoreWind(double speed, double kilograms) {
        assertEquals(kilograms, WindLoad.of(AREA, 1, 12, 3, 0.5).massFor(speed), 1e-3);
    }
}
