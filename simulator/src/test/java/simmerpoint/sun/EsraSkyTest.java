package simmerpoint.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class EsraSkyTest {
    private static final LocalDate JULY = LocalDate.of(2026, 7, 16);

    private static double beam(double turbidity, double elevation, double altitude) {
        return new EsraSky(LinkeTurbidity.constant(turbidity))
                .beamWattsPerSquareMetre(MadeUpSky.moment(elevation, altitude, JULY));
    }

    /**
     * Rigollier, Bauer and Wald, Solar Energy 68 (2000) 33-48, with Kasten 1996: their formulas evaluated apart from
     * this program for turbidity 2 to 6 at sea level, 1367 W/m² above the air.
     */
    @ParameterizedTest
    @CsvSource({
        "10, 675.8, 475.2, 334.1, 234.9, 165.2",
        "20, 860.5, 682.7, 541.7, 429.8, 341.0",
        "30, 957.4, 801.2, 670.5, 561.1, 469.6",
        "45, 1037.9, 904.3, 788.0, 686.6, 598.2",
        "60, 1080.5, 960.7, 854.1, 759.4, 675.1",
        "90, 1108.6, 998.4, 899.1, 809.7, 729.1"
    })
    void meetsThePublishedFormula(double elevation, double two, double three, double four, double five, double six) {
        double[] expected = {two, three, four, five, six};
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], beam(i + 2, elevation, 0), 0.1);
        }
    }

    /** As above, 1500 m above the sea. */
    @ParameterizedTest
    @CsvSource({"30, 1000.1, 855.4", "60, 1115.1, 1007.1"})
    void isBrighterHighUp(double elevation, double two, double three) {
        assertEquals(two, beam(2, elevation, 1500), 0.1);
        assertEquals(three, beam(3, elevation, 1500), 0.1);
    }

    /** As above with the table's turbidity of July, sun 60° high. */
    @ParameterizedTest
    @CsvSource({"MOUNTAINS, 1043.1", "RURAL, 905.8", "CITY, 814.9", "INDUSTRIAL, 691.2"})
    void settingsDifferInJuly(AirType setting, double expected) {
        double beam = EsraSky.of(setting).beamWattsPerSquareMetre(MadeUpSky.moment(60, 0, JULY));
        assertEquals(expected, beam, 0.1);
    }

    /** 1367 W/m² at one astronomical unit fall with its square: derived. */
    @Test
    void nearerSunIsBrighter() {
        double far = EsraSky.of(AirType.RURAL).beamWattsPerSquareMetre(MadeUpSky.moment(45, 60, 0, JULY, 1.0167));
        double mean = EsraSky.of(AirType.RURAL).beamWattsPerSquareMetre(MadeUpSky.moment(45, 60, 0, JULY, 1));
        assertEquals(1 / (1.0167 * 1.0167), far / mean, 1e-12);
    }

    /** The two branches of the Rayleigh depth meet within 0.1 % at air mass 20; nothing else may jump at low sun. */
    @Test
    void fadesSmoothlyToTheHorizon() {
        double before = beam(3, 0.02, 0);
        for (double elevation = 0.04; elevation < 6; elevation += 0.02) {
            double now = beam(3, elevation, 0);
            assertTrue(now > before - 0.2 && now < before + 3, elevation + "°: " + before + " then " + now);
            before = now;
        }
        assertEquals(0, beam(3, -0.1, 0));
    }

    /** Round trip: the sky fitted to one measurement gives it back, and the air it was made with. */
    @Test
    void oneMeasurementFixesTheAir() {
        Site site = Site.ofDegrees(47, 8, 600, ZoneId.of("Europe/Zurich"));
        SunMoment morning = SunMoment.at(site, ZonedDateTime.of(2026, 8, 3, 9, 15, 0, 0, site.zone()));
        double measured = new EsraSky(LinkeTurbidity.constant(4.2)).beamWattsPerSquareMetre(morning);
        EsraSky sky = EsraSky.matching(measured, morning);
        assertEquals(measured, sky.beamWattsPerSquareMetre(morning), 1e-9);
        assertEquals(4.2, sky.turbidity().on(morning.date(), site), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1400, 1320, 1, 0, -5, Double.NaN})
    void refusesAMeasurementNoClearSkyGives(double beam) {
        SunMoment moment = MadeUpSky.moment(50, 0, JULY);
        assertThrows(IllegalArgumentException.class, () -> EsraSky.matching(beam, moment));
    }

    @Test
    void refusesAMeasurementByNight() {
        SunMoment night = MadeUpSky.moment(-5, 0, JULY);
        assertThrows(IllegalArgumentException.class, () -> EsraSky.matching(500, night));
    }
}
