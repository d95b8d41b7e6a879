package simmerpoint.safety.parked;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a dish does that is left uncovered.
 *
 * @param offAxis how its hottest light falls as the sun moves away from the axis
 * @param date the day of the scenario; empty where it names no place
 * @param ways ways of parking through that day and, if asked for, days of all seasons; empty where it names no place
 */
public record ParkedResult(List<OffAxis> offAxis, Optional<LocalDate> date, List<ParkedWay> ways) {
    /** Keeps copies of the lists. */
    public ParkedResult {
        offAxis = List.copyOf(offAxis);
        ways = List.copyOf(ways);
    }

    /** The angle from which on the light is below {@code flux} W/m² at all larger angles that were looked at; empty if never. */
    public Optional<OffAxis> harmlessFrom(double flux) {
        Optional<OffAxis> from = Optional.empty();
        for (OffAxis each : offAxis) {
            if (each.spot().flux() > flux) {
                from = Optional.empty();
            } else if (from.isEmpty()) {
                from = Optional.of(each);
            }
        }
        return from;
    }

    /** The dish left as it was aimed; empty where the scenario names no place. */
    public Optional<ParkedWay> leftAsAimed() {
        return ways.stream().filter(way -> way.parking() == Parking.AS_AIMED).findFirst();
    }

    /** The best of the ways: that of least light at its worst moment. */
    public Optional<ParkedWay> best() {
        return ways.stream()
                .min(Comparator.comparingDouble(
                        way -> way.worst().map(hour -> hour.spot().flux()).orElse(0.0)));
    }
}
