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

    /** Noon at a site, the sun as far as it is on that date: 1 − 0.0167 cos(2π(day − 3)/365). */
    static SunMoment moment(Site site, double elevation, LocalDate date) {
        double h = Math.toRadians(elevation);
        double distance = 1 - 0.0167 * Math.cos(2 * Math.PI * (date.getDayOfYear() - 3) / 365);
        return new SunMoment(site, date.atTime(12, 0).atZone(UTC), new SunPosition(h, h, Math.PI, distance));
    }

    static SunMoment moment(double latitude, double elevation, double altitudeMetres, LocalDate date, double distance) {
        Site site = Site.ofDegrees(latitude, 0, altitudeMetres, UTC);
        double h = Math.toRadians(elevation);
        return new SunMoment(site, date.atTime(12, 0).atZone(UTC), new SunPosition(h, h, Math.PI, distance));
    }
}
