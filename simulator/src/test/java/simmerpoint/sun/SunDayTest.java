package simmerpoint.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SunriseResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.sun.SunDay.Kind;

class SunDayTest {
    private static final Site FAR_NORTH = Site.ofDegrees(69.65, 18.95, 0, ZoneId.of("Europe/Oslo"));

    private static double hours(ZonedDateTime time) {
        return time.toLocalTime().toNanoOfDay() / 3.6e12;
    }

    private static SunDay example() {
        return SunDay.of(EphemerisTest.GOLDEN, LocalDate.of(2003, 10, 17));
    }

    /** Worked example of Reda and Andreas 2004: 6.212, 11.768 and 17.314 h; half a digit, and a second of ours. */
    @Test
    void meetsTheWorkedExample() {
        assertEquals(Kind.RISES_AND_SETS, example().kind());
        assertEquals(6.212, hours(example().sunrise().orElseThrow()), 8e-4);
        assertEquals(11.768, hours(example().solarNoon()), 8e-4);
        assertEquals(17.314, hours(example().sunset().orElseThrow()), 8e-4);
    }

    /** The library's own way (interpolated declinations, appendix A.2 of Reda and Andreas) within 10 s. */
    @ParameterizedTest
    @CsvSource({
        "47, 8, Europe/Zurich, 2026-06-10",
        "-33.87, 151.2, Australia/Sydney, 2026-01-10",
        "1.87, -157.4, Pacific/Kiritimati, 2026-03-20",
        "55, -3, Europe/London, 2026-12-21"
    })
    void agreesWithAnotherAlgorithm(double latitude, double longitude, String zone, LocalDate date) {
        SunDay day = SunDay.of(Site.ofDegrees(latitude, longitude, 0, ZoneId.of(zone)), date);
        ZonedDateTime midday = date.atTime(12, 0).atZone(ZoneId.of(zone));
        SunriseResult.RegularDay other =
                (SunriseResult.RegularDay) SPA.calculateSunriseTransitSet(midday, latitude, longitude, 70);
        assertEquals(0, seconds(other.sunrise(), day.sunrise().orElseThrow()), 10);
        assertEquals(0, seconds(other.sunset(), day.sunset().orElseThrow()), 10);
    }

    private static double seconds(ZonedDateTime a, ZonedDateTime b) {
        return Duration.between(a, b).toMillis() / 1000.0;
    }

    /** Duffie and Beckman, chapter 1 (from memory): Madison, 3 February, 10:30 by the clock is 10:19 by the sun. */
    @Test
    void solarNoonIsTheTextbooks() {
        Site madison = Site.ofDegrees(43.1, -89.4, 270, ZoneId.of("UTC-6"));
        ZonedDateTime noon = SunDay.of(madison, LocalDate.of(2026, 2, 3)).solarNoon();
        assertEquals(12 + 11.0 / 60, hours(noon), 0.5 / 60);
    }

    /**
     * At noon the sun stands in the meridian, 90° − |latitude − declination| high (derived; without air;
     * here and at the pole parallax lowers the sun by up to 0.0025°).
     * Noon is good to a second and a half, in which the sun walks 0.0001 rad.
     */
    @ParameterizedTest
    @CsvSource({"47, 8", "-34, 151", "10, 77", "-5, -60", "65, 25"})
    void noonIsInTheMeridian(double latitude, double longitude) {
        ZoneId zone = ZoneId.of("UTC");
        Site site = Site.ofDegrees(latitude, longitude, 0, zone);
        for (int month = 1; month <= 12; month++) {
            SunDay day = SunDay.of(site, LocalDate.of(2026, month, 15));
            SunPosition noon = SunMoment.at(site, day.solarNoon()).position();
            assertEquals(0, noon.towardsSun().vec().x(), 1.1e-4);
            double declination = Math.toDegrees(declination(site, day.solarNoon()));
            assertEquals(
                    90 - Math.abs(latitude - declination), Math.toDegrees(noon.geometricElevationRadians()), 0.005);
        }
    }

    /** Declination from the elevation at the north pole at the same instant. */
    private static double declination(Site site, ZonedDateTime time) {
        Site pole = new Site(Math.PI / 2, 0, 0, site.zone());
        return SunMoment.at(pole, time).position().geometricElevationRadians();
    }

    /**
     * At the solstice the declination stands still, so morning and afternoon mirror each other (derived: it moves by
     * less than 0.001° in six hours; the equation of time walks by 13 s a day there, 0.014° in six hours).
     */
    @Test
    void morningMirrorsAfternoonAtSolstice() {
        Site site = Site.ofDegrees(47, 8, 0, ZoneId.of("UTC"));
        ZonedDateTime noon = SunDay.of(site, LocalDate.of(2026, 6, 21)).solarNoon();
        for (int hours = 1; hours <= 6; hours++) {
            SunPosition before = SunMoment.at(site, noon.minusHours(hours)).position();
            SunPosition after = SunMoment.at(site, noon.plusHours(hours)).position();
            assertEquals(before.elevationRadians(), after.elevationRadians(), Math.toRadians(0.02));
            assertEquals(2 * Math.PI, before.azimuthRadians() + after.azimuthRadians(), Math.toRadians(0.02));
        }
    }

    /**
     * At an equinox on the equator the sun is up 12 h plus twice 50 minutes of arc at 15° an hour: 6 min 40 s.
     * Derived.
     */
    @Test
    void equinoxDayIsTwelveHoursAndRefraction() {
        Site site = Site.ofDegrees(0, 0, 0, ZoneId.of("UTC"));
        SunDay day = SunDay.of(site, LocalDate.of(2026, 3, 20));
        double length = seconds(day.sunrise().orElseThrow(), day.sunset().orElseThrow());
        assertEquals(12 * 3600 + 400, length, 10);
        SunPosition rising = SunMoment.at(site, day.sunrise().orElseThrow()).position();
        assertEquals(90, Math.toDegrees(rising.azimuthRadians()), 0.3);
    }

    @Test
    void midnightSunAndPolarNightAreValues() {
        SunDay summer = SunDay.of(FAR_NORTH, LocalDate.of(2026, 6, 21));
        assertEquals(Kind.NEVER_SETS, summer.kind());
        assertTrue(summer.sunrise().isEmpty() && summer.sunset().isEmpty());
        SunDay winter = SunDay.of(FAR_NORTH, LocalDate.of(2026, 12, 21));
        assertEquals(Kind.NEVER_RISES, winter.kind());
        assertTrue(winter.sunrise().isEmpty() && winter.sunset().isEmpty());
        assertEquals(LocalDate.of(2026, 12, 21), winter.solarNoon().toLocalDate());
    }

    /** Near the first midnight sun the sun sets after midnight by the clock, later than it rose that morning. */
    @Test
    void lateSunsetBelongsToTheDayItEnds() {
        SunDay day = SunDay.of(FAR_NORTH, LocalDate.of(2026, 5, 16));
        assertEquals(Kind.RISES_AND_SETS, day.kind());
        assertTrue(day.sunrise().orElseThrow().isBefore(day.solarNoon()));
        assertTrue(day.sunset().orElseThrow().isAfter(day.solarNoon()));
        assertEquals(LocalDate.of(2026, 5, 17), day.sunset().orElseThrow().toLocalDate());
    }

    /** Between May's last sunset and the next midnight there is a day that rises and does not set. */
    @Test
    void lastRisingOfSpringHasNoSunset() {
        boolean found = false;
        for (int date = 15; date <= 20; date++) {
            SunDay day = SunDay.of(FAR_NORTH, LocalDate.of(2026, 5, date));
            found |= day.sunrise().isPresent() && day.sunset().isEmpty();
            assertFalse(day.sunrise().isEmpty() && day.kind() == Kind.NEVER_RISES);
        }
        assertTrue(found);
    }
}
