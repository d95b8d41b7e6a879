package simmerpoint.safety.parked;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import simmerpoint.safety.risk.Hazard;

/**
 * One way of parking through one day or several.
 *
 * @param parking which one
 * @param azimuthRadians where the dish faces, from north over east
 * @param elevationRadians of its axis
 * @param hours with the sun up, in order
 */
public record ParkedWay(Parking parking, double azimuthRadians, double elevationRadians, List<ParkedHour> hours) {
    /** Keeps a copy of the list. */
    public ParkedWay {
        hours = List.copyOf(hours);
    }

    /** The worst moment of all, if the sun is up at all. */
    public Optional<ParkedHour> worst() {
        return hours.stream().max(Comparator.comparingDouble(hour -> hour.spot().flux()));
    }

    /** The worst light of one day, W/m². */
    public double worstOn(LocalDate date) {
        return on(date).stream().mapToDouble(hour -> hour.spot().flux()).max().orElse(0);
    }

    /** The moments of one day. */
    public List<ParkedHour> on(LocalDate date) {
        return hours.stream()
                .filter(hour -> hour.time().toLocalDate().equals(date))
                .toList();
    }

    /** Moments of one day at which dry leaves can catch fire. */
    public List<ParkedHour> burning(LocalDate date) {
        return on(date).stream()
                .filter(hour -> hour.spot().flux() > Hazard.TINDER.wattsPerSquareMetre())
                .toList();
    }

    /** The moment at which something gets most light, and gets any from the mirrors at all. */
    public Optional<ParkedHour> worstBy(ToDoubleFunction<ParkedSpot> flux) {
        return hours.stream()
                .filter(hour -> flux.applyAsDouble(hour.spot()) > 0)
                .max(Comparator.comparingDouble(hour -> flux.applyAsDouble(hour.spot())));
    }

    /** The moment at which a thing, counted as in {@link ParkedSpot#things}, gets most light; empty where it is not followed. */
    public Optional<ParkedHour> worstFor(int thing) {
        return hours.stream()
                .filter(hour -> hour.spot().things().size() > thing)
                .max(Comparator.comparingDouble(hour -> hour.spot().things().get(thing)));
    }
}
