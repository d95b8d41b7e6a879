package simmerpoint.sun;

import java.time.LocalDate;
import java.time.ZoneId;

/** Moments with the sun put wherever a printed table wants it. */
final class MadeUpSky {
    private static final ZoneId UTC = ZoneId.of("UTC");

    private MadeUpSky() {}

    /** Noon of {@code date} at 45° north, the sun {@code elevation} degrees high, one astronomical unit away. */
    static SunMoment moment(double elevation, double altitudeMetres, LocalDate date) {
        return moment(45, elevation, altitudeMetres, date, 1);
    }

    static SunMoment moment(double latitude, double elevation, double altitudeMetres, LocalDate date, double distance) {
        Site site = Site.ofDegrees(latitude, 0, altitudeMetres, UTC);
        double h = Math.toRadians(elevation);
        return new SunMoment(site, date.atTime(12, 0).atZone(UTC), new SunPosition(h, h, Math.PI, distance));
    }
}
