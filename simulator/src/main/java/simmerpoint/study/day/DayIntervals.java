package simmerpoint.study.day;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Finds when figures of a day are not below 0: between two instants they are taken to run straight, so that begin and end are read
 * between the hours. A figure of minus infinity at either instant counts as below 0 all the time between.
 */
final class DayIntervals {
    private DayIntervals() {}

    /** The intervals over instants in order of time in which none of the figures is below 0. */
    static List<DayInterval> over(List<DayHour> curve, List<ToDoubleFunction<DayHour>> figures) {
        List<DayInterval> found = new ArrayList<>();
        for (int k = 1; k < curve.size(); k++) {
            DayInterval next = between(curve.get(k - 1), curve.get(k), figures);
            DayInterval last = found.isEmpty() ? null : found.get(found.size() - 1);
            if (last != null && next.from().equals(last.to())) {
                found.set(found.size() - 1, new DayInterval(last.from(), next.to()));
            } else if (next.from().isBefore(next.to())) {
                found.add(next);
            }
        }
        return List.copyOf(found);
    }

    /** The part between two instants; of no length if there is none. */
    private static DayInterval between(DayHour a, DayHour b, List<ToDoubleFunction<DayHour>> figures) {
        double from = 0;
        double to = 1;
        for (ToDoubleFunction<DayHour> figure : figures) {
            double first = figure.applyAsDouble(a);
            double second = figure.applyAsDouble(b);
            if (!(Double.isFinite(first) && Double.isFinite(second)) || Math.max(first, second) < 0) {
                return new DayInterval(b.time(), b.time());
            }
            double crossing = first / (first - second);
            from = first < 0 ? Math.max(from, crossing) : from;
            to = second < 0 ? Math.min(to, crossing) : to;
        }
        return from < to ? new DayInterval(at(a, b, from), at(a, b, to)) : new DayInterval(b.time(), b.time());
    }

    private static ZonedDateTime at(DayHour a, DayHour b, double share) {
        if (share == 0 || share == 1) {
            return share == 0 ? a.time() : b.time();
        }
        double seconds = Duration.between(a.time(), b.time()).toSeconds();
        return a.time().plusSeconds(Math.round(share * seconds));
    }
}
