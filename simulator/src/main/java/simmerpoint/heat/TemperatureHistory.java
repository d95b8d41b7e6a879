package simmerpoint.heat;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The curve of one pan through given spells of light.
 *
 * @param points in order of time, the first at the start, the last at the end; two at the same instant where the light
 *     changes or boiling begins
 * @param boilSeconds when boiling first began, if it did
 * @param drySeconds when the pan had boiled or dried to a fiftieth of its water, if it did: the curve ends there
 */
public record TemperatureHistory(List<TemperaturePoint> points, OptionalDouble boilSeconds, OptionalDouble drySeconds) {
    /** Keeps its own copy of the points. */
    public TemperatureHistory {
        points = List.copyOf(points);
    }

    /** The end. */
    public TemperaturePoint last() {
        return points.get(points.size() - 1);
    }

    /** Temperature at an instant, °C: straight line between points; the first or last one's outside. */
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
