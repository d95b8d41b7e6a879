package simmerpoint.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** Laws that follow from what the words mean, anywhere on Earth. */
class SunDayProperties {
    private static final double SUN_WALKS_PER_SECOND = Math.toRadians(15.0 / 3600);

    @Property(seed = "42", tries = 150)
    void risingNoonAndSettingAreInOrder(
            @ForAll @DoubleRange(min = -90, max = 90) double latitude,
            @ForAll @DoubleRange(min = -180, max = 180) double longitude,
            @ForAll @IntRange(min = 0, max = 40_000) int daysSince1950) {
        Site site = Site.ofDegrees(latitude, longitude, 0, nearestZone(longitude));
        LocalDate date = LocalDate.of(1950, 1, 1).plusDays(daysSince1950);
        SunDay day = SunDay.of(site, date);
        assertEquals(date, day.solarNoon().toLocalDate());
        day.sunrise().ifPresent(rise -> {
            assertTrue(rise.isBefore(day.solarNoon()));
            isOnTheHorizon(site, rise);
        });
        day.sunset().ifPresent(set -> {
            assertTrue(set.isAfter(day.solarNoon()));
            isOnTheHorizon(site, set);
        });
        boolean crosses = day.sunrise().isPresent() || day.sunset().isPresent();
        assertEquals(crosses, day.kind() == SunDay.Kind.RISES_AND_SETS);
    }

    /** The sun climbs by no more than the Earth turns, and the time is good to a second. */
    private static void isOnTheHorizon(Site site, ZonedDateTime time) {
        double elevation = SunMoment.at(site, time).position().geometricElevationRadians();
        assertEquals(SunDay.HORIZON, elevation, 1.01 * SUN_WALKS_PER_SECOND);
    }

    /** Away from the poles no hour is higher than noon, but for the walk of the declination (0.4° a day at most). */
    @Property(seed = "43", tries = 100)
    void noHourIsHigherThanNoon(
            @ForAll @DoubleRange(min = -65, max = 65) double latitude,
            @ForAll @IntRange(min = 0, max = 40_000) int daysSince1950) {
        Site site = Site.ofDegrees(latitude, 8, 0, ZoneOffset.UTC);
        SunDay day = SunDay.of(site, LocalDate.of(1950, 1, 1).plusDays(daysSince1950));
        double noon = SunMoment.at(site, day.solarNoon()).position().elevationRadians();
        for (int hour = -11; hour <= 11; hour++) {
            ZonedDateTime time = day.solarNoon().plus(Duration.ofHours(hour));
            double elevation = SunMoment.at(site, time).position().elevationRadians();
            assertTrue(elevation <= noon + 1e-9, hour + " h");
        }
    }

    private static ZoneOffset nearestZone(double longitude) {
        return ZoneOffset.ofHours((int) Math.round(longitude / 15));
    }
}
