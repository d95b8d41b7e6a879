package simmerpoint.sun;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Optional;
import net.e175.klaus.solarpositioning.SPA;

/**
 * Sunrise, solar noon and sunset of one date, between the solar midnights before and after its solar noon. At rising and
 * setting the upper edge of the sun touches a level horizon at sea level: its centre is 0.8333° below, of which 34 minutes
 * of arc are refraction and 16 the sun's half-angle (the almanacs' convention). Weather shifts that by a minute or two,
 * hills by far more.
 *
 * @param site where
 * @param date local date
 * @param kind whether the sun rises and sets, never sets or never rises
 * @param sunrise empty if the sun was up at the midnight before, or if it never rises
 * @param solarNoon transit of the meridian
 * @param sunset may be after midnight local time; empty if the sun stays up or never rises
 */
public record SunDay(
        Site site,
        LocalDate date,
        Kind kind,
        Optional<ZonedDateTime> sunrise,
        ZonedDateTime solarNoon,
        Optional<ZonedDateTime> sunset) {
    /** Geometric elevation of the sun's centre at rising and setting, rad: −50 minutes of arc. */
    static final double HORIZON = Math.toRadians(-50.0 / 60);

    private static final long HALF_DAY_SECONDS = 43_200;

    /** The three kinds of day. */
    public enum Kind {
        /** The sun is below the horizon for part of the day. */
        RISES_AND_SETS,
        /** The sun stays above the horizon from midnight to midnight. */
        NEVER_SETS,
        /** The sun stays below the horizon. */
        NEVER_RISES
    }

    /** The day of {@code date} at {@code site}. Sunrise and sunset to the second, for a level horizon. */
    public static SunDay of(Site site, LocalDate date) {
        ZonedDateTime noon = solarNoon(site, date);
        ZonedDateTime before = noon.minusSeconds(HALF_DAY_SECONDS);
        ZonedDateTime after = noon.plusSeconds(HALF_DAY_SECONDS);
        boolean upBefore = isAboveHorizon(site, before);
        boolean upAtNoon = isAboveHorizon(site, noon);
        boolean upAfter = isAboveHorizon(site, after);
        Optional<ZonedDateTime> sunrise = upAtNoon == upBefore ? Optional.empty() : Optional.of(crossing(site, before));
        Optional<ZonedDateTime> sunset = upAtNoon == upAfter ? Optional.empty() : Optional.of(crossing(site, noon));
        Kind kind = kind(upBefore, upAtNoon, upAfter);
        return new SunDay(site, date, kind, sunrise, noon, sunset);
    }

    private static Kind kind(boolean upBefore, boolean upAtNoon, boolean upAfter) {
        if (upBefore == upAtNoon && upAtNoon == upAfter) {
            return upAtNoon ? Kind.NEVER_SETS : Kind.NEVER_RISES;
        }
        return Kind.RISES_AND_SETS;
    }

    private static ZonedDateTime solarNoon(Site site, LocalDate date) {
        ZonedDateTime midday = date.atTime(12, 0).atZone(site.zone());
        return SPA.calculateSunriseTransitSet(
                        midday,
                        Math.toDegrees(site.latitudeRadians()),
                        Math.toDegrees(site.longitudeRadians()),
                        Ephemeris.deltaT(midday))
                .transit();
    }

    private static boolean isAboveHorizon(Site site, ZonedDateTime time) {
        return SunMoment.at(site, time).position().geometricElevationRadians() >= HORIZON;
    }

    /** The horizon crossing within half a day after {@code from}, by bisection to a second (16 steps). */
    private static ZonedDateTime crossing(Site site, ZonedDateTime from) {
        boolean upFirst = isAboveHorizon(site, from);
        long low = 0;
        long high = HALF_DAY_SECONDS;
        while (high - low > 1) {
            long middle = (low + high) / 2;
            if (isAboveHorizon(site, from.plusSeconds(middle)) == upFirst) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return from.plusSeconds(high);
    }
}
