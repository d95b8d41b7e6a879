package simmerpoint.sun;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;

/**
 * Position of the sun and beam over one date, from midnight to midnight local time. The steps are equal in real time, so a
 * date on which the clock is changed has an hour's steps less or more.
 *
 * @param day rising, noon and setting
 * @param points in order of time, the first at the start of the date, the last before its end
 */
public record DailyBeamProfile(SunDay day, List<Point> points) {
    /** Steps may be this long at most. */
    public static final Duration LONGEST_STEP = Duration.ofHours(6);

    /** Copies the list. */
    public DailyBeamProfile {
        points = List.copyOf(points);
    }

    /**
     * One instant.
     *
     * @param moment time and position of the sun
     * @param beam direct normal irradiance; 0 while the sun is down
     */
    public record Point(SunMoment moment, BeamRange beam) {}

    /**
     * The date at {@code site} under {@code sky}, a point every {@code step} (one minute to {@link #LONGEST_STEP}).
     */
    public static DailyBeamProfile of(Site site, LocalDate date, Duration step, BeamRangeModel sky) {
        if (!(step.compareTo(Duration.ofMinutes(1)) >= 0 && step.compareTo(LONGEST_STEP) <= 0)) {
            throw new IllegalArgumentException("a step of " + step + " is outside 1 minute to 6 hours");
        }
        List<Point> points = new ArrayList<>();
        ZonedDateTime end = date.plusDays(1).atStartOfDay(site.zone());
        for (ZonedDateTime t = date.atStartOfDay(site.zone()); t.isBefore(end); t = t.plus(step)) {
            SunMoment moment = SunMoment.at(site, t);
            points.add(new Point(moment, sky.at(moment)));
        }
        return new DailyBeamProfile(SunDay.of(site, date), points);
    }

    /** The points at which the sun is up; none in the polar night. */
    public List<Point> sunlit() {
        return points.stream().filter(point -> point.moment().position().isUp()).toList();
    }
}
