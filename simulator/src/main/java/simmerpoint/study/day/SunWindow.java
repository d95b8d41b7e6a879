package simmerpoint.study.day;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import simmerpoint.sun.SunDay;
import simmerpoint.sun.SunMoment;

/**
 * The part of a day in which the sun stands at least so high, and the instants to look at in it.
 *
 * @param from when it gets there, or the solar midnight before if it is there all the time
 * @param to when it leaves, or the solar midnight after
 */
record SunWindow(ZonedDateTime from, ZonedDateTime to) {
    private static final long HALF_DAY_SECONDS = 43_200;
    private static final long SOLAR_SLACK_SECONDS = 60;

    /** The part of {@code day} with the sun at {@code least} (rad) or higher; empty if it never gets there. */
    static Optional<SunWindow> of(SunDay day, double least) {
        ZonedDateTime noon = day.solarNoon();
        if (!isOver(day, noon, least)) {
            return Optional.empty();
        }
        return Optional.of(new SunWindow(
                passing(day, noon.minusSeconds(HALF_DAY_SECONDS), noon, least),
                passing(day, noon.plusSeconds(HALF_DAY_SECONDS), noon, least)));
    }

    private static boolean isOver(SunDay day, ZonedDateTime time, double least) {
        return SunMoment.at(day.site(), time).position().elevationRadians() >= least;
    }

    /** The second at which the sun passes {@code least}, on the side where it is over it; {@code low} if it is over there. */
    private static ZonedDateTime passing(SunDay day, ZonedDateTime low, ZonedDateTime high, double least) {
        if (isOver(day, low, least)) {
            return low;
        }
        ZonedDateTime under = low;
        ZonedDateTime over = high;
        while (Math.abs(Duration.between(under, over).toSeconds()) > 1) {
            ZonedDateTime middle =
                    under.plusSeconds(Duration.between(under, over).toSeconds() / 2);
            if (isOver(day, middle, least)) {
                over = middle;
            } else {
                under = middle;
            }
        }
        return over;
    }

    /** Every {@code step} counted from the midnight of the clock, within the window. */
    List<ZonedDateTime> clockTimes(SunDay day, Duration step) {
        ZonedDateTime midnight = day.date().atStartOfDay(day.site().zone());
        long first = Math.floorDiv(Duration.between(midnight, from).toSeconds(), step.toSeconds());
        List<ZonedDateTime> times = new ArrayList<>();
        for (long k = first; ; k++) {
            ZonedDateTime t = midnight.plusSeconds(k * step.toSeconds());
            if (t.isAfter(to)) {
                return times;
            }
            if (!t.isBefore(from)) {
                times.add(t);
            }
        }
    }

    /** The instants of {@code clock} with begin, noon and end of the window where they are not there already, in order. */
    List<ZonedDateTime> withEnds(List<ZonedDateTime> clock, ZonedDateTime noon) {
        List<ZonedDateTime> all = new ArrayList<>(clock);
        for (ZonedDateTime extra : List.of(from, noon, to)) {
            boolean there = all.stream()
                    .anyMatch(t -> Math.abs(Duration.between(t, extra).toSeconds()) < SOLAR_SLACK_SECONDS);
            if (!there) {
                all.add(extra);
            }
        }
        all.sort(ZonedDateTime::compareTo);
        return all;
    }
}
