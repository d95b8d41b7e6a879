package simmerpoint.sun;

import java.time.ZoneId;

/**
 * Where on Earth the dish stands, and by which clock its cook lives.
 *
 * @param latitudeRadians geographic latitude, −π/2 to π/2, north positive
 * @param longitudeRadians geographic longitude, −π to π, east positive
 * @param altitudeMetres height above the sea, −500 to 9000 m
 * @param zone rules of the local clock; dates and hours of a day are read by it
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

    /** A place from degrees of latitude (north positive) and longitude (east positive), and metres above the sea. */
    public static Site ofDegrees(double latitude, double longitude, double altitudeMetres, ZoneId zone) {
        return new Site(Math.toRadians(latitude), Math.toRadians(longitude), altitudeMetres, zone);
    }

    /** Whether the seasons are those of the southern half of the Earth; the equator counts as northern. */
    public boolean southern() {
        return latitudeRadians < 0;
    }

    /** This place at another height above the sea (m), for models that know only some heights. */
    Site atAltitude(double metres) {
        return new Site(latitudeRadians, longitudeRadians, metres, zone);
    }
}
