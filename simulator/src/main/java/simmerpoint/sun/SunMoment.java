package simmerpoint.sun;

import java.time.LocalDate;
import java.time.ZonedDateTime;

/**
 * Position of the sun at one site and time.
 *
 * @param site of the observer
 * @param time local time
 * @param position of the sun
 */
public record SunMoment(Site site, ZonedDateTime time, SunPosition position) {
    /** First year for which positions are given. */
    public static final int FIRST_YEAR = 1900;

    /** Last year for which positions are given; the Earth's rotation is predictable to a minute or two by then. */
    public static final int LAST_YEAR = 2199;

    /** Refuses a time outside {@link #FIRST_YEAR} to {@link #LAST_YEAR}; converts it to local time. */
    public SunMoment {
        time = time.withZoneSameInstant(site.zone());
        if (!(time.getYear() >= FIRST_YEAR && time.getYear() <= LAST_YEAR)) {
            throw new IllegalArgumentException(
                    "year " + time.getYear() + " is outside " + FIRST_YEAR + " to " + LAST_YEAR);
        }
    }

    /**
     * The sun at {@code site} at {@code time} (in any zone), refracted by the standard atmosphere of that altitude.
     */
    public static SunMoment at(Site site, ZonedDateTime time) {
        StandardAtmosphere air = StandardAtmosphere.at(site.altitudeMetres());
        return new SunMoment(site, time, Ephemeris.position(site, time, air, Ephemeris.deltaT(time)));
    }

    /** Local date. */
    public LocalDate date() {
        return time.toLocalDate();
    }

    /** The same at another altitude, m. */
    SunMoment atAltitude(double metres) {
        return new SunMoment(site.atAltitude(metres), time, position);
    }

    /** The same with both elevations at least {@code elevation} (rad). */
    SunMoment atLeast(double elevation) {
        return new SunMoment(site, time, position.atLeast(elevation));
    }
}
