package simmerpoint.sun;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Optional;
import net.e175.klaus.solarpositioning.SPA;

/**
 * One day of the sun: from the solar midnight before the solar noon of the date to the one after it. Rising and setting
 * are the moments when the upper edge of the sun touches a level horizon at sea level: its middle 0.8333° below it, of
 * which 34 minutes of arc are refraction and 16 the sun's half width (the almanacs' convention). Weather shifts that
 * by a minute or two, hills by far more.
 *
 * @param place where
 * @param date the date by the clock of the place
 * @param kind whether the sun rises and sets, never sets or never rises
 * @param sunrise when it rises; empty if it was up already at the midnight before, or if it never rises
 * @param solarNoon when it crosses the meridian
 * @param sunset when it sets, perhaps after midnight by the clock; empty if it stays up or never rises
 */
public record SunDay(
        Site place,
        LocalDate date,
        Kind kind,
        Optional<ZonedDateTime> sunrise,
        ZonedDateTime solarNoon,
        Optional<ZonedDateTime> sunset) {
    /** Elevation of the sun's middle without air at rising and setting, rad: −50 minutes of arc. */
    static final double HORIZON = Math.toRadians(-50.0 / 60);

    private static final long HALF_DAY_SECONDS = 43_200;

    /** The three sorts of day. */
    public enum Kind {
        /** The sun is below the horizon for part of the day. */
        RISES_AND_SETS,
        /** The sun stays above the horizon from midnight to midnight. */
        NEVER_SETS,
        /** The sun stays below the horizon. */
        NEVER_RISES
    }

    /** The day of {@code date} at {@code place}. Sunrise and sunset to the second, for a level horizon. */
    public static SunDay of(Site place, LocalDate date) {
        ZonedDateTime noon = solarNoon(place, date);
        ZonedDateTime before = noon.minusSeconds(HALF_DAY_SECONDS);
        ZonedDateTime after = noon.plusSeconds(HALF_DAY_SECONDS);
        boolean upBefore = isOver(place, before);
        boolean upAtNoon = isOver(place, noon);
        boolean upAfter = isOver(place, after);
        Optional<ZonedDateTime> sunrise =
                upAtNoon == upBefore ? Optional.empty() : Optional.of(crossing(place, before));
        Optional<ZonedDateTime> sunset = upAtNoon == upAfter ? Optional.empty() : Optional.of(crossing(place, noon));
        Kind kind = kind(upBefore, upAtNoon, upAfter);
        return new SunDay(place, date, kind, sunrise, noon, sunset);
    }

    private static Kind kind(boolean upBefore, boolean upAtNoon, boolean upAfter) {
        if (upBefore == upAtNoon && upAtNoon == upAfter) {
            return upAtNoon ? Kind.NEVER_SETS : Kind.NEVER_RISES;
        }
        return Kind.RISES_AND_SETS;
    }

    private static ZonedDateTime solarNoon(Site place, LocalDate date) {
        ZonedDateTime midday = date.atTime(12, 0).atZone(place.zone());
        return SPA.calculateSunriseTransitSet(
                        midday,
                        Math.toDegrees(place.latitudeRadians()),
                        Math.toDegrees(place.longitudeRadians()),
                        Ephemeris.clockLag(midday))
                .transit();
    }

    private static boolean isOver(Site place, ZonedDateTime time) {
        return SunMoment.at(place, time).position().geometricElevationRadians() >= HORIZON;
    }

    /** The one change within half a day after {@code from}, halving down to a second; half a day takes 16 halvings. */
    private static ZonedDateTime crossing(Site place, ZonedDateTime from) {
        boolean upFirst = isOver(place, from);
        long low = 0;
        long high = HALF_DAY_SECONDS;
        while (high - low > 1) {
            long middle = (low + high) / 2;
            if (isOver(place, from.plusSeconds(middle)) == upFirst) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return from.plusSeconds(high);
    }
}
