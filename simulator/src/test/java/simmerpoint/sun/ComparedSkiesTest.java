package simmerpoint.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ComparedSkiesTest {
    private static double beam(ClearSky sky, double elevation, double altitude, int month) {
        return sky.beamWattsPerSquareMetre(MadeUpSky.moment(elevation, altitude, LocalDate.of(2026, month, 21)));
    }

    /**
     * Meinel's formula with 1353 W/m² (constants from a text that quotes it, layout from memory) and air masses of
     * Kasten and Young 1989, evaluated apart from this program, at sea level and at 1500 m.
     */
    @ParameterizedTest
    @CsvSource({"90, 947.166, 1032.391", "60, 913.270, 1005.613", "30, 765.503, 888.877", "10, 430.553, 624.267"})
    void meinel(double elevation, double low, double high) {
        assertEquals(low, beam(new MeinelSky(), elevation, 0, 6), 1e-3);
        assertEquals(high, beam(new MeinelSky(), elevation, 1500, 6), 1e-3);
    }

    /** The usual air mass of test standards, as above. */
    @Test
    void meinelAtAirMassOneAndAHalf() {
        assertEquals(846.026, 1353 * MeinelSky.transmittance(1.5, 0), 1e-3);
    }

    /**
     * A table of sunlight by zenith angle as encyclopedias print it, rounded to 10 W/m²: Meinel's beam plus 10 % of
     * scattered light. 8 W/m² leaves room for its rounding.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 1040",
        "23, 1020",
        "30, 1010",
        "45, 950",
        "48.2, 930",
        "60, 840",
        "70, 710",
        "75, 620",
        "80, 470",
        "85, 270",
        "90, 20"
    })
    void meinelMeetsThePrintedTable(double zenith, double printed) {
        double airMass = AirMass.relative(Math.toRadians(90 - zenith));
        assertEquals(printed, 1.1 * 1353 * MeinelSky.transmittance(airMass, 0), 8);
    }

    /** ASHRAE Handbook of Fundamentals 2005, chapter 31: A exp(−B / sin h) evaluated apart from this program. */
    @ParameterizedTest
    @CsvSource({
        "1, 30, 906.637",
        "6, 30, 754.282",
        "6, 60, 881.960",
        "6, 75, 901.662",
        "7, 45, 840.198",
        "12, 20, 797.234"
    })
    void ashrae2005(int month, double elevation, double expected) {
        assertEquals(expected, beam(AshraeSky.edition2005(), elevation, 0, month), 1e-3);
    }

    /**
     * South: July's haze in January; A scaled by the square of the ratio of the distances, 1.0167 to 0.9833, derived.
     */
    @Test
    void ashraeTurnsTheYearInTheSouth() {
        LocalDate january = LocalDate.of(2026, 1, 21);
        double south = AshraeSky.edition2005().beamWattsPerSquareMetre(MadeUpSky.moment(-34, 45, 0, january, 0.9833));
        assertEquals(840.198 * Math.pow(1.0167 / 0.9833, 2), south, 0.5);
    }

    /** Hottel 1976 for the standard atmosphere (coefficients from memory), zeniths 0, 30, 60°, at 0 and 1500 m. */
    @ParameterizedTest
    @CsvSource({"0, 0.642020, 0.747156", "30, 0.612140, 0.725694", "60, 0.477033, 0.623996"})
    void hottelsStandardAtmosphere(double zenith, double low, double high) {
        double sine = Math.cos(Math.toRadians(zenith));
        assertEquals(low, HottelSky.transmittance(HottelSky.Climate.STANDARD, sine, 0), 1e-6);
        assertEquals(high, HottelSky.transmittance(HottelSky.Climate.STANDARD, sine, 1500), 1e-6);
    }

    /**
     * Duffie and Beckman, Solar Engineering of Thermal Processes, section 2.8 (from memory): Madison at 270 m, 22
     * August, 11:30 by the sun, cosine of the zenith 0.846, 1339 W/m² above the air: 0.62 comes through, 830 W/m².
     */
    @Test
    void hottelsTextbookExample() {
        double distance = Math.sqrt(1367 / 1338.49);
        double elevation = Math.toDegrees(Math.asin(0.845622));
        SunMoment moment = MadeUpSky.moment(43, elevation, 270, LocalDate.of(2026, 8, 22), distance);
        assertEquals(829.584, new HottelSky().beamWattsPerSquareMetre(moment), 0.01);
        assertEquals(830, new HottelSky().beamWattsPerSquareMetre(moment), 1);
    }

    @ParameterizedTest
    @CsvSource({
        "10, 1, TROPICAL",
        "45, 7, MID_LATITUDE_SUMMER",
        "45, 1, MID_LATITUDE_WINTER",
        "-45, 1, MID_LATITUDE_SUMMER",
        "-45, 7, MID_LATITUDE_WINTER",
        "65, 7, SUBARCTIC_SUMMER",
        "65, 12, MID_LATITUDE_WINTER"
    })
    void hottelsClimateFollowsPlaceAndSeason(double latitude, int month, HottelSky.Climate climate) {
        SunMoment moment = MadeUpSky.moment(latitude, 30, 0, LocalDate.of(2026, month, 21), 1);
        assertEquals(climate, HottelSky.Climate.of(moment));
    }

    /**
     * The same printed table gives a spread by pollution; its beam (without the 10 % of scattered light) is 709 to
     * 1000 W/m² with the sun 60° high, 509 to 882 at 30°. All models of country and town air in summer must lie
     * within.
     */
    @Test
    void allModelsLieInThePrintedSpread() {
        List<ClearSky> skies = List.of(
                EsraSky.of(AirType.RURAL),
                EsraSky.of(AirType.CITY),
                new MeinelSky(),
                AshraeSky.edition2005(),
                new HottelSky());
        for (ClearSky sky : skies) {
            for (int month = 5; month <= 8; month++) {
                double high = beam(sky, 60, 0, month);
                double low = beam(sky, 30, 0, month);
                assertTrue(high >= 709 && high <= 1000, sky.describe() + ": " + high);
                assertTrue(low >= 509 && low <= 882, sky.describe() + ": " + low);
            }
        }
    }

    @Test
    void nightHasNoBeam() {
        for (ClearSky sky : List.of(new MeinelSky(), AshraeSky.edition2005(), new HottelSky(), new FixedBeam(800))) {
            assertEquals(0, beam(sky, -1, 0, 6), sky.describe());
            assertTrue(beam(sky, 20, 0, 6) > 400, sky.describe());
        }
    }
}
