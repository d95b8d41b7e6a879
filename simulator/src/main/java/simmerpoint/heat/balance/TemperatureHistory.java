package simmerpoint.heat.balance;

import java.util.List;
import java.util.OptionalDouble;
import simmerpoint.heat.losses.Losses;

/**
 * Temperature of one pan over time in given light.
 *
 * @param points in order of time, the first at the start, the last at the end; two at the same time where the light changes
 *     or boiling begins
 * @param boilSeconds when boiling first began, if it did
 * @param drySeconds when only a fiftieth of the water was left, if it was: the history ends there
 */
public record TemperatureHistory(List<Point> points, OptionalDouble boilSeconds, OptionalDouble drySeconds) {
    /**
     * One point.
     *
     * @param seconds since the start
     * @param celsius temperature of the water
     * @param waterKilograms remaining water
     * @param absorbedWatts absorbed light
     * @param losses at that time, steam of boiling included
     * @param since energies since the start
     */
    public record Point(
            double seconds,
            double celsius,
            double waterKilograms,
            double absorbedWatts,
            Losses losses,
            EnergyBalance since) {}

    /** Copies the points. */
    public TemperatureHistory {
        points = List.copyOf(points);
    }

    /** The last point. */
    public Point last() {
        return points.get(points.size() - 1);
    }

    /** Temperature at a time, °C: linear between points, constant outside. */
    public double celsiusAt(double seconds) {
        Point before = points.get(0);
        for (Point point : points) {
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
