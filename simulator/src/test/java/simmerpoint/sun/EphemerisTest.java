package simmerpoint.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import org.junit.jupiter.api.Test;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Vec;

/**
 * The worked example of I. Reda and A. Andreas, Solar position algorithm for solar radiation applications, Solar
 * Energy 76 (2004) 577-589 and NREL/TP-560-34302.
 */
class EphemerisTest {
    static final Site GOLDEN = Site.ofDegrees(39.742476, -105.1786, 1830.14, ZoneId.of("UTC-7"));
    static final ZonedDateTime EXAMPLE = ZonedDateTime.of(2003, 10, 17, 12, 30, 30, 0, ZoneOffset.ofHours(-7));

    private static SunPosition example() {
        return Ephemeris.position(GOLDEN, EXAMPLE, new StandardAtmosphere(82_000, 284.15), 67);
    }

    /**
     * Digits of the report: zenith 50.11162°, azimuth 194.34024°. Distance 0.9965421031 au as test files of other
     * programs quote it; how many of the small terms are added up moves the seventh digit, which is nothing to a
     * beam.
     */
    @Test
    void meetsTheWorkedExample() {
        assertEquals(90 - 50.11162, Math.toDegrees(example().elevationRadians()), 1e-5);
        assertEquals(194.34024, Math.toDegrees(example().azimuthRadians()), 1e-5);
        assertEquals(0.9965421031, example().distanceAstronomicalUnits(), 3e-7);
    }

    /** Derived here from the example's topocentric declination and hour angle: zenith 50.127958° without air. */
    @Test
    void leavesOutTheAirForTheGeometricElevation() {
        assertEquals(90 - 50.127958, Math.toDegrees(example().geometricElevationRadians()), 1e-5);
    }

    /** The example's surface: tilted 30°, turned 10° east of south; the sun falls on it at 25.18700°. */
    @Test
    void groundFrameIsEastNorthUp() {
        double azimuth = Math.toRadians(170);
        double level = Math.sin(Math.toRadians(30));
        Direction surface = Direction.of(
                new Vec(level * Math.sin(azimuth), level * Math.cos(azimuth), Math.cos(Math.toRadians(30))));
        double incidence = Math.acos(example().towardsSun().dot(surface));
        assertEquals(25.18700, Math.toDegrees(incidence), 1e-5);
    }

    /**
     * The standard air of the altitude (812 hPa, 3 °C) for the example's (820 hPa, 11 °C) changes its refraction of
     * 0.0163° by 2 % (derived: both times their pressure over temperature), the estimated clock lag far less.
     */
    @Test
    void standardAirIsGoodEnoughHighUp() {
        SunPosition usual = SunMoment.at(GOLDEN, EXAMPLE).position();
        assertEquals(90 - 50.11162, Math.toDegrees(usual.elevationRadians()), 5e-4);
        assertEquals(194.34024, Math.toDegrees(usual.azimuthRadians()), 5e-4);
    }

    /** Standard atmosphere, ISO 2533:1975: pressures at 0, 1000, 3000 and 5000 m, Pa, as its tables give them. */
    @Test
    void standardAirIsThatOfTheStandard() {
        assertEquals(101325, StandardAtmosphere.at(0).pressurePascals(), 1e-9);
        assertEquals(89874.6, StandardAtmosphere.at(1000).pressurePascals(), 1);
        assertEquals(70108.5, StandardAtmosphere.at(3000).pressurePascals(), 1);
        assertEquals(54019.9, StandardAtmosphere.at(5000).pressurePascals(), 1);
        assertEquals(255.65, StandardAtmosphere.at(5000).temperatureKelvin(), 1e-9);
    }
}
