package simmerpoint.sun;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DailyBeamProfileTest {
    private static final Site LAKE = Site.ofDegrees(47, 8, 500, ZoneId.of("Europe/Zurich"));
    private static final BeamRangeModel SKY = BeamRangeModel.around(EsraSky.of(AirType.RURAL));

    private static DailyBeamProfile course(Site site, LocalDate date, int minutes) {
        return DailyBeamProfile.of(site, date, Duration.ofMinutes(minutes), SKY);
    }

    /** Days of 24 hours, and the two on which the clocks of Europe changed in 2026 (29 March, 25 October). */
    @ParameterizedTest
    @CsvSource({"2026-06-21, 96", "2026-03-29, 92", "2026-10-25, 100"})
    void coversTheDateOnce(LocalDate date, int points) {
        List<DailyBeamProfile.Point> all = course(LAKE, date, 15).points();
        assertEquals(points, all.size());
        assertEquals(LocalTime.MIDNIGHT, all.get(0).moment().time().toLocalTime());
        for (int i = 1; i < points; i++) {
            ZonedDateTime before = all.get(i - 1).moment().time();
            assertEquals(
                    Duration.ofMinutes(15),
                    Duration.between(before, all.get(i).moment().time()));
            assertEquals(date, all.get(i).moment().date());
        }
    }

    /** There is a beam between sunrise and sunset and none outside; at the edges half a step is left open. */
    @Test
    void beamFollowsTheSun() {
        DailyBeamProfile course = course(LAKE, LocalDate.of(2026, 9, 3), 10);
        ZonedDateTime rise = course.day().sunrise().orElseThrow();
        ZonedDateTime set = course.day().sunset().orElseThrow();
        for (DailyBeamProfile.Point point : course.points()) {
            ZonedDateTime time = point.moment().time();
            if (time.isBefore(rise) || time.isAfter(set)) {
                assertEquals(BeamRange.NONE, point.beam());
            } else if (time.isAfter(rise.plusMinutes(5)) && time.isBefore(set.minusMinutes(5))) {
                assertTrue(point.beam().likelyWattsPerSquareMetre() > 0, time.toString());
            }
        }
        Duration up = Duration.between(rise, set);
        assertEquals(up.toMinutes() / 10.0, course.sunlit().size(), 2);
    }

    /** The highest point is the one nearest to solar noon, and the beam is strongest about there. */
    @Test
    void noonIsTheHighest() {
        DailyBeamProfile course = course(LAKE, LocalDate.of(2026, 6, 21), 5);
        DailyBeamProfile.Point highest = course.points().get(0);
        DailyBeamProfile.Point brightest = highest;
        for (DailyBeamProfile.Point point : course.points()) {
            if (point.moment().position().elevationRadians()
                    > highest.moment().position().elevationRadians()) {
                highest = point;
            }
            if (point.beam().likelyWattsPerSquareMetre() > brightest.beam().likelyWattsPerSquareMetre()) {
                brightest = point;
            }
        }
        assertTrue(Duration.between(course.day().solarNoon(), highest.moment().time())
                        .abs()
                        .compareTo(Duration.ofSeconds(151))
                < 0);
        assertEquals(highest, brightest);
        // 90° less the latitude plus the obliquity of 23.44° (derived).
        assertEquals(66.44, Math.toDegrees(highest.moment().position().elevationRadians()), 0.05);
    }

    @Test
    void polarNightHasNoSunlitPoint() {
        Site north = Site.ofDegrees(75, 20, 0, ZoneId.of("Arctic/Longyearbyen"));
        assertTrue(course(north, LocalDate.of(2026, 12, 21), 60).sunlit().isEmpty());
        assertEquals(24, course(north, LocalDate.of(2026, 6, 21), 60).sunlit().size());
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -5, 361})
    void refusesStepsThatAreNone(int minutes) {
        assertThrows(IllegalArgumentException.class, () -> course(LAKE, LocalDate.of(2026, 6, 21), minutes));
    }
}
