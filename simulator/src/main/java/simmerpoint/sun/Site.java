package simmerpoint.sun;

import java.time.ZoneId;

/**
 * Location of the dish on Earth and its local time zone.
 *
 * @param latitudeRadians geographic latitude, −π/2 to π/2, north positive
 * @param longitudeRadians geographic longitude, −π to π, east positive
 * @param altitudeMetres height above the sea, −500 to 9000 m
 * @param zone of local time, for dates and hours of a day
 */
public record Site(double latitudeRadians, double longitudeRadians, double altitudeMetres, ZoneId zone) {
    /** Lowest altitude, m: below every shore on Earth. */
    public static final double LOWEST_ALTITUDE = -500;

    /** Highest altitude, m: above every mountain on Earth. */
    public static final double HIGHEST_ALTITUDE = 9000;

    /** Checks the ranges. */
    public Site {
        if (!(Math.abs(latitudeRadians) <= Math.PI / 2)) {
            throw new IllegalArgumentException(
                    "latitude " + Math.toDegrees(latitudeRadians) + "° is outside -90° to 90°");
        }
        if (!(Math.abs(longitudeRadians) <= Math.PI)) {
            throw new IllegalArgumentException(
                    "longitude " + Math.toDegrees(longitudeRadians) + "° is outside -180° to 180°");
        }
        if (!(altitudeMetres >= LOWEST_ALTITUDE && altitudeMetres <= HIGHEST_ALTITUDE)) {
            throw new IllegalArgumentException("altitude " + altitudeMetres + " m is outside -500 m to 9000 m");
        }
        if (zone == null) {
            throw new IllegalArgumentException("a place needs the zone of its clock");
        }
    }

    /** A site from degrees of latitude (north positive) and longitude (east positive), and metres above the sea. */
    public static Site ofDegrees(double latitude, double longitude, double altitudeMetres, ZoneId zone) {
        return new Site(Math.toRadians(latitude), Math.toRadians(longitude), altitudeMetres, zone);
    }

    /** Whether the site is south of the equator. */
    public boolean southern() {
        return latitudeRadians < 0;
    }

    /** This site at another altitude (m), for models of limited altitude. */
    Site atAltitude(double metres) {
        return new Site(latitudeRadians, longitudeRadians, metres, zone);
    }
}
