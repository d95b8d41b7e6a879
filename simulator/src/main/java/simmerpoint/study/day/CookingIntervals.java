package simmerpoint.study.day;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import simmerpoint.uncertainty.LikelyRange;

/**
 * Finds when it simmers: between two instants the watts to spare are taken to run straight, so that begin and end are
 * read between the hours.
 */
final class CookingIntervals {
    private final ToDoubleFunction<LikelyRange> end;
    private final List<CookingInterval> intervals = new ArrayList<>();
    private Optional<ZonedDateTime> begun = Optional.empty();

    private CookingIntervals(ToDoubleFunction<LikelyRange> end) {
        this.end = end;
    }

    /** The intervals over instants in order of time, for one end of the range of the watts to spare. */
    static List<CookingInterval> over(List<DayHour> curve, ToDoubleFunction<LikelyRange> end) {
        CookingIntervals finder = new CookingIntervals(end);
        for (int k = 0; k < curve.size(); k++) {
            finder.look(curve.get(k), k == 0 ? Optional.empty() : Optional.of(curve.get(k - 1)));
        }
        finder.end(curve.isEmpty() ? null : curve.get(curve.size() - 1).time());
        return List.copyOf(finder.intervals);
    }

    private void look(DayHour now, Optional<DayHour> before) {
        boolean cooks = spare(now) >= 0;
        if (cooks && begun.isEmpty()) {
            begun = Optional.of(before.flatMap(b -> crossing(b, now)).orElse(now.time()));
        } else if (!cooks && begun.isPresent()) {
            DayHour last = before.orElseThrow();
            end(crossing(last, now).orElse(last.time()));
        }
    }

    private void end(ZonedDateTime at) {
        begun.filter(from -> from.isBefore(at)).ifPresent(from -> intervals.add(new CookingInterval(from, at)));
        begun = Optional.empty();
    }

    private double spare(DayHour hour) {
        return hour.light().map(l -> end.applyAsDouble(l.simmerSpareWatts())).orElse(Double.NEGATIVE_INFINITY);
    }

    /** Where the straight line between two instants passes 0; empty where one of them has no light. */
    private Optional<ZonedDateTime> crossing(DayHour a, DayHour b) {
        double first = spare(a);
        double second = spare(b);
        if (!(Double.isFinite(first) && Double.isFinite(second))) {
            return Optional.empty();
        }
        double seconds = Duration.between(a.time(), b.time()).toSeconds();
        return Optional.of(a.time().plusSeconds(Math.round(seconds * first / (first - second))));
    }
}
