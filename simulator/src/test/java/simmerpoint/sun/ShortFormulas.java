package simmerpoint.sun;

import java.time.ZoneOffset;
import java.time.ZonedDateTime;

/**
 * The sun by short formulas, for comparison. Declination and equation of time by J. W. Spencer, Fourier series
 * representation of the position of the sun, Search 2 (1971) 172, the latter with the digits of J. A. Duffie and W.
 * A. Beckman (229.2 and 0.04089); the turn from hour angle to elevation and azimuth is spherical trigonometry.
 */
final class ShortFormulas {
    private ShortFormulas() {}

    private static double yearAngle(double dayOfYear) {
        return 2 * Math.PI * (dayOfYear - 1) / 365;
    }

    /** Declination, rad. */
    static double declination(double dayOfYear) {
        double b = yearAngle(dayOfYear);
        return 0.006918
                - 0.399912 * Math.cos(b)
                + 0.070257 * Math.sin(b)
                - 0.006758 * Math.cos(2 * b)
                + 0.000907 * Math.sin(2 * b)
                - 0.002697 * Math.cos(3 * b)
                + 0.00148 * Math.sin(3 * b);
    }

    /** Sundial minus clock, minutes. */
    static double equationOfTime(double dayOfYear) {
        double b = yearAngle(dayOfYear);
        return 229.2
                * (0.000075
                        + 0.001868 * Math.cos(b)
                        - 0.032077 * Math.sin(b)
                        - 0.014615 * Math.cos(2 * b)
                        - 0.04089 * Math.sin(2 * b));
    }

    /** Day of the year, a whole number at 0 h UTC: Spencer's series counts from there. */
    static double day(ZonedDateTime time) {
        ZonedDateTime utc = time.withZoneSameInstant(ZoneOffset.UTC);
        return utc.getDayOfYear() + utc.toLocalTime().toSecondOfDay() / 86_400.0;
    }

    /** Hour angle, rad, west positive. */
    static double hourAngle(Site site, ZonedDateTime time) {
        ZonedDateTime utc = time.withZoneSameInstant(ZoneOffset.UTC);
        double minutes = utc.toLocalTime().toSecondOfDay() / 60.0 + equationOfTime(day(utc));
        return Math.toRadians(minutes / 4 - 180) + site.longitudeRadians();
    }

    /** Sine of the elevation, no air. */
    static double sineOfElevation(double latitude, double declination, double hourAngle) {
        return Math.sin(latitude) * Math.sin(declination)
                + Math.cos(latitude) * Math.cos(declination) * Math.cos(hourAngle);
    }

    /** Azimuth from north over east, rad, −π to π, of a sun at that declination and hour angle (west positive). */
    static double azimuth(double latitude, double declination, double hourAngle) {
        double west = Math.cos(declination) * Math.sin(hourAngle);
        double north = Math.cos(latitude) * Math.sin(declination)
                - Math.sin(latitude) * Math.cos(declination) * Math.cos(hourAngle);
        return Math.atan2(-west, north);
    }
}
