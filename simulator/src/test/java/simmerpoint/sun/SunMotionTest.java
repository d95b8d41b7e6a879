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
import simmerpoint.geometry.Vec;

class SunMotionTest {
    /** 15° an hour: 4.36332 mrad a minute in hour angle, derived. */
    private static final double HOUR_ANGLE_PER_MINUTE = 4.36332e-3;

    private static final ZoneId UTC = ZoneId.of("UTC");

    private static SunMoment noon(double latitude, LocalDate date) {
        Site site = Site.ofDegrees(latitude, 8, 0, UTC);
        return SunMoment.at(site, SunDay.of(site, date).solarNoon());
    }

    /**
     * On the sky 15° an hour times the cosine of the declination, derived. Wide of it: the sundial's day is up to 30
     * s off 24 h (0.035 %), the declination walks by 1' an hour (1e-5 in the sum of squares), refraction squeezes by
     * 0.06 %.
     */
    @ParameterizedTest
    @CsvSource({"2026-03-20, 0", "2026-06-21, 23.436", "2026-09-23, 0", "2026-12-21, -23.436"})
    void speedIsThatOfTheTurningEarth(LocalDate date, double declination) {
        double expected = HOUR_ANGLE_PER_MINUTE * Math.cos(Math.toRadians(declination));
        for (double latitude : new double[] {-40, 0, 23.436, 47}) {
            double speed = SunMotion.at(noon(latitude, date)).radiansPerMinute();
            assertEquals(expected, speed, 0.0011 * expected, "latitude " + latitude);
        }
    }

    /** Derived: the sun passes its own width of 9.3 mrad in 2.1314 min at an equinox, tolerance as above. */
    @Test
    void passesItsOwnWidthInTwoMinutes() {
        SunMotion motion = SunMotion.at(noon(47, LocalDate.of(2026, 3, 20)));
        assertEquals(2.13140, motion.minutesFor(9.3e-3), 0.0011 * 2.1314);
        // The ray through the vertex of a dish of 0.5 m focal length then walks 21.8305 mm in 10 min and 43.7443 in 20.
        assertEquals(21.8305, 500 * Math.tan(10 * motion.radiansPerMinute()), 0.03);
        assertEquals(43.7443, 500 * Math.tan(20 * motion.radiansPerMinute()), 0.06);
        assertThrows(IllegalArgumentException.class, () -> motion.minutesFor(Double.NaN));
    }

    /** Facing the noon sun, west is on the right in the north and on the left in the south. */
    @Test
    void sideIsTheRightHandOfWhoLooksAtTheSun() {
        SunMotion north = SunMotion.at(noon(47, LocalDate.of(2026, 4, 20)));
        SunMotion south = SunMotion.at(noon(-34, LocalDate.of(2026, 4, 20)));
        assertTrue(north.sideRadiansPerMinute() > 4e-3);
        assertTrue(south.sideRadiansPerMinute() < -4e-3);
        assertEquals(0, north.upRadiansPerMinute(), 2e-5);
    }

    @Test
    void morningSunRisesAndAfternoonSunFalls() {
        SunMoment noon = noon(47, LocalDate.of(2026, 4, 20));
        SunMotion morning = SunMotion.at(SunMoment.at(noon.site(), noon.time().minusHours(4)));
        SunMotion afternoon = SunMotion.at(SunMoment.at(noon.site(), noon.time().plusHours(4)));
        assertTrue(morning.upRadiansPerMinute() > 2e-3);
        assertTrue(afternoon.upRadiansPerMinute() < -2e-3);
        assertTrue(morning.sideRadiansPerMinute() > 1e-3 && afternoon.sideRadiansPerMinute() > 1e-3);
    }

    /**
     * Derived from the frame of a dish aimed at the sun (z to the sun, x the upper edge, y = z × x): five minutes
     * later the sun has walked by five times the rate along x and y, but for the bend of its path (second order, 0.5
     * ω² t² tan h).
     */
    @ParameterizedTest
    @CsvSource({"47, 7", "47, 12", "47, 15", "-34, 9", "5, 10"})
    void ratesAreThoseOfTheDishFrame(double latitude, int hour) {
        Site site = Site.ofDegrees(latitude, 0, 0, UTC);
        ZonedDateTime time = ZonedDateTime.of(2026, 5, 10, hour, 0, 0, 0, UTC);
        SunMoment moment = SunMoment.at(site, time);
        Vec z = moment.position().towardsSun().vec();
        Vec east = new Vec(0, 0, 1).cross(z);
        Vec y = east.times(-1 / east.length());
        Vec x = y.cross(z);
        assertTrue(x.z() > 0, "x is the upper edge");
        assertEquals(0, z.cross(x).minus(y).length(), 1e-12);
        Vec later =
                SunMoment.at(site, time.plusMinutes(5)).position().towardsSun().vec();
        SunMotion motion = SunMotion.at(moment);
        assertEquals(5 * motion.upRadiansPerMinute(), later.dot(x), 5e-4);
        assertEquals(5 * motion.sideRadiansPerMinute(), later.dot(y), 5e-4);
    }

    /** Speed stays what it is where the azimuth spins: on the equator at an equinox the noon sun is in the zenith. */
    @Test
    void nothingGoesWildInTheZenith() {
        SunMoment noon = noon(0, LocalDate.of(2026, 3, 20));
        assertTrue(noon.position().elevationRadians() > Math.toRadians(89.5));
        for (int minutes = -10; minutes <= 10; minutes++) {
            SunMoment moment = SunMoment.at(noon.site(), noon.time().plusMinutes(minutes));
            assertEquals(HOUR_ANGLE_PER_MINUTE, SunMotion.at(moment).radiansPerMinute(), 5e-6);
        }
    }

    /** Where the library drops refraction below the horizon there is a step of half a degree; the speed knows none. */
    @Test
    void speedIsSmoothAboutSunrise() {
        Site site = Site.ofDegrees(47, 8, 0, UTC);
        ZonedDateTime sunrise =
                SunDay.of(site, LocalDate.of(2026, 3, 20)).sunrise().orElseThrow();
        for (int minutes = -15; minutes <= 15; minutes++) {
            SunMoment moment = SunMoment.at(site, sunrise.plusMinutes(minutes));
            double speed = SunMotion.at(moment).radiansPerMinute();
            assertTrue(speed > 3.8e-3 && speed < 4.45e-3, minutes + " min: " + speed);
        }
    }
}
