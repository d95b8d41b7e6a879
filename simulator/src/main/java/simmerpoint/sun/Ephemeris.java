package simmerpoint.sun;

import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;

/**
 * Position of the sun by the library "solarpositioning", which follows I. Reda and A. Andreas, Solar position algorithm for
 * solar radiation applications, Solar Energy 76 (2004) 577-589. Error at most 0.0003°, except for refraction near the
 * horizon, which varies by a tenth of a degree with the weather.
 */
final class Ephemeris {
    private Ephemeris() {}

    /** ΔT = terrestrial time minus universal time, s, estimated for the year of {@code time} to some seconds. */
    static double deltaT(ZonedDateTime time) {
        return DeltaT.estimate(time.toLocalDate());
    }

    /** Apparent position at {@code site} through {@code air}; {@code deltaT} as of {@link #deltaT}, s. */
    static SunPosition position(Site site, ZonedDateTime time, StandardAtmosphere air, double deltaT) {
        SPA.SpaTimeDependent sky = SPA.calculateSpaTimeDependentParts(time, deltaT);
        double latitude = Math.toDegrees(site.latitudeRadians());
        double longitude = Math.toDegrees(site.longitudeRadians());
        double altitude = site.altitudeMetres();
        SolarPosition airless = SPA.calculateSolarPositionWithTimeDependentParts(latitude, longitude, altitude, sky);
        SolarPosition seen = SPA.calculateSolarPositionWithTimeDependentParts(
                latitude, longitude, altitude, air.hectopascals(), air.celsius(), sky);
        return new SunPosition(elevation(seen), elevation(airless), Math.toRadians(seen.azimuth()), sky.r());
    }

    private static double elevation(SolarPosition position) {
        return Math.toRadians(90 - position.zenithAngle());
    }
}
