package simmerpoint.sun;

import java.time.LocalDate;
import java.time.ZonedDateTime;

/**
 * A place, a time, and where the sun stands then and there.
 *
 * @param place where
 * @param time when, by the clock of the place
 * @param position the sun in the sky of the place
 */
public record SunMoment(Site place, ZonedDateTime time, SunPosition position) {
    /** First year for which positions are given. */
    public static final int FIRST_YEAR = 1900;

    /** Last year for which positions are given; by then the Earth's turning is guessed to a minute or two. */
    public static final int LAST_YEAR = 2199;

    /** Refuses a time outside {@link #FIRST_YEAR} to {@link #LAST_YEAR}; turns it to the clock of the place. */
    public SunMoment {
        time = time.withZoneSameInstant(place.zone());
        if (!(time.getYear() >= FIRST_YEAR && time.getYear() <= LAST_YEAR)) {
            throw new IllegalArgumentException(
                    "year " + time.getYear() + " is outside " + FIRST_YEAR + " to " + LAST_YEAR);
        }
    }

    /**
     * The sun at {@code place} at {@code time} (in any zone), seen through the standard atmosphere of that altitude.
     */
    public static SunMoment at(Site place, ZonedDateTime time) {
        StandardAtmosphere air = StandardAtmosphere.at(place.altitudeMetres());
        return new SunMoment(place, time, Ephemeris.position(place, time, air, Ephemeris.clockLag(time)));
    }

    /** The date by the clock of the place. */
    public LocalDate date() {
        return time.toLocalDate();
    }

    /** The same sun seen from another altitude, m. */
    SunMoment atAltitude(double metres) {
        return new SunMoment(place.atAltitude(metres), time, position);
    }

    /** The same with the sun raised to {@code elevation} (rad, with and without air) where it is lower. */
    SunMoment atLeast(double elevation) {
        return new SunMoment(place, time, position.atLeast(elevation));
    }
}
