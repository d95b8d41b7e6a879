package simmerpoint.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UsualBeamTest {
    private static double at(double degrees, double metres) {
        return UsualBeam.wattsPerSquareMetre(Math.toRadians(degrees), metres);
    }

    /**
     * Means of three figures worked out apart from this program: Meinel's table (checked formula: 947, 913, 766, 431 W/m² at 90, 60, 30, 10°),
     * Hottel's standard atmosphere at 0 m (0.642, 0.612, 0.477 of 1367 W/m²), Rigollier, Bauer and Wald with turbidity 3.5, which lies between
     * the printed 3 and 4 (998.4 and 899.1; 960.7 and 854.1; 801.2 and 670.5 W/m²) in their geometric mean.
     */
    @ParameterizedTest
    @CsvSource({
        "90, 947.2, 0.64202, 998.4, 899.1",
        "60, 913.3, 0.61214, 960.7, 854.1",
        "30, 765.5, 0.47703, 801.2, 670.5"
    })
    void isTheMeanOfThreeModels(double degrees, double meinel, double hottel, double esra3, double esra4) {
        assertEquals((meinel + 1367 * hottel + Math.sqrt(esra3 * esra4)) / 3, at(degrees, 0), 6);
    }

    /** The usual figure of the scenario file, in the printed spread of clear to hazy air at every height (709 to 1000 at 60°, 509 to 882 at 30°). */
    @Test
    void liesInThePrintedSpread() {
        assertEquals(850, at(50, 0));
        assertTrue(at(60, 0) > 709 && at(60, 0) < 1000);
        assertTrue(at(30, 0) > 509 && at(30, 0) < 882);
    }

    @Test
    void risesWithTheSunAndWithHeight() {
        for (double degrees = 2; degrees <= 90; degrees += 2) {
            assertTrue(at(degrees, 0) >= at(degrees - 1, 0), degrees + "°");
            assertTrue(at(degrees, 2000) > at(degrees, 0), degrees + "°");
            assertTrue(
                    at(degrees, 0) <= 10 + MaximumBeam.wattsPerSquareMetre(Math.toRadians(degrees), 0), degrees + "°");
        }
    }
}
