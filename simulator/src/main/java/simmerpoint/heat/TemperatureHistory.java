package simmerpoint.heat;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Temperature of one pan over time in given light.
 *
 * @param points in order of time, the first at the start, the last at the end; two at the same time where the light changes
 *     or boiling begins
 * @param boilSeconds when boiling first began, if it did
 * @param drySeconds when only a fiftieth of the water was left, if it was: the history ends there
 */
public record TemperatureHistory(List<TemperaturePoint> points, OptionalDouble boilSeconds, OptionalDouble drySeconds) {
    /** Keeps its own copy of the points. */
    public TemperatureHistory {
        points = List.copyOf(points);
    }

    /** The last point. */
    public TemperaturePoint last() {
        return points.get(points.size() - 1);
    }

    /** Temperature at a time, °C: linear between points, constant outside. */
    public double celsiusAt(double seconds) {
        TemperaturePoint before = points.get(0);
        for (TemperaturePoint point : points) {
            if (point.seconds() > seconds) {
                double span = point.seconds() - before.seconds();
                double share = span > 0 ? Math.max(0, seconds - before.seconds()) / span : 0;
                return before.celsius() + share * (point.celsius() - before.celsius());
            }
            before = point;
        }
        return before.celsius();
    }
}
