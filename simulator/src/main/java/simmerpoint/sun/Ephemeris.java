package simmerpoint.sun;

import java.time.ZonedDateTime;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;

/**
 * The sun's place among the stars, turned into elevation and azimuth by the library "solarpositioning", which follows
 * I. Reda and A. Andreas, Solar position algorithm for solar radiation applications, Solar Energy 76 (2004) 577-589:
 * 0.0003° off at most, refraction near the horizon apart. The air there bends by a tenth of a degree more or less
 * with the weather.
 */
final class Ephemeris {
    private Ephemeris() {}

    /** Terrestrial time minus universal time, s, estimated for the year of {@code time}; some seconds off. */
    static double clockLag(ZonedDateTime time) {
        return DeltaT.estimate(time.toLocalDate());
    }

    /** Position seen at {@code place} through {@code air}; {@code clockLag} as of {@link #clockLag}, s. */
    static SunPosition position(Site place, ZonedDateTime time, StandardAtmosphere air, double clockLag) {
        SPA.SpaTimeDependent sky = SPA.calculateSpaTimeDependentParts(time, clockLag);
        double latitude = Math.toDegrees(place.latitudeRadians());
        double longitude = Math.toDegrees(place.longitudeRadians());
        double altitude = place.altitudeMetres();
        SolarPosition airless = SPA.calculateSolarPositionWithTimeDependentParts(latitude, longitude, altitude, sky);
        SolarPosition seen = SPA.calculateSolarPositionWithTimeDependentParts(
                latitude, longitude, altitude, air.hectopascals(), air.celsius(), sky);
        return new SunPosition(elevation(seen), elevation(airless), Math.toRadians(seen.azimuth()), sky.r());
    }

    private static double elevation(SolarPosition position) {
        return Math.toRadians(90 - position.zenithAngle());
    }
}
