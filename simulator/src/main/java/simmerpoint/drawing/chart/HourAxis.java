package simmerpoint.drawing.chart;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The local clock along a picture: full hours around a span of time, evenly in real time.
 *
 * @param hours the full hours, first and last at the ends
 */
record HourAxis(List<ZonedDateTime> hours) {
    /** The full hours around the span. */
    static HourAxis around(ZonedDateTime from, ZonedDateTime to) {
        List<ZonedDateTime> hours = new ArrayList<>();
        ZonedDateTime t = from.truncatedTo(ChronoUnit.HOURS);
        hours.add(t);
        while (t.isBefore(to)) {
            t = t.plusHours(1);
            hours.add(t);
        }
        if (hours.size() == 1) {
            hours.add(t.plusHours(1));
        }
        return new HourAxis(List.copyOf(hours));
    }

    /** Where a time lies, 0 to 1. */
    double share(ZonedDateTime time) {
        ZonedDateTime first = hours.get(0);
        return Duration.between(first, time).toSeconds()
                / (double) Duration.between(first, hours.get(hours.size() - 1)).toSeconds();
    }

    /** The hour of the k-th mark. */
    String label(int k) {
        return String.format(Locale.ROOT, "%02d:00", hours.get(k).getHour());
    }

    /** The least step between hours whose labels, so wide with what parts them, fit along an axis of a width. */
    int step(double width, double label) {
        return (int) Math.max(1, Math.ceil(label * (hours.size() - 1) / width));
    }
}
