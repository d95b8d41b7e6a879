package simmerpoint.sun;

import java.time.LocalDate;

/**
 * Beam by the two-constant formula of the ASHRAE Handbook of Fundamentals: beam = A exp(−B / sin h), h the elevation, A
 * (W/m²) and B by month for the 21st, for average clear air of the United States near sea level. A includes the distance of
 * the sun. Ours: a smooth curve between the 21sts; south of the equator the year is shifted by six months and A corrected
 * for the distance of the sun.
 */
public final class AshraeSky implements ClearSky {
    private static final MonthlyTable TABLE = MonthlyTable.read("ashrae-beam.tsv");
    private static final int DAY = 21;
    private static final int HALF_YEAR = 6;

    private static final int EDITION = 2005;

    private final YearlyCurve apparent;
    private final YearlyCurve extinction;

    private AshraeSky() {
        this.apparent = YearlyCurve.throughDay(DAY, TABLE.values(EDITION + " A"));
        this.extinction = YearlyCurve.throughDay(DAY, TABLE.values(EDITION + " B"));
    }

    /** The constants of the 2005 handbook, chapter 31. */
    public static AshraeSky edition2005() {
        return new AshraeSky();
    }

    @Override
    public String describe() {
        return "clear sky of the ASHRAE handbook of " + EDITION;
    }

    @Override
    public double highestAltitudeMetres() {
        return 0;
    }

    @Override
    public double beamWattsPerSquareMetre(SunMoment moment) {
        double sine = Math.sin(moment.position().geometricElevationRadians());
        if (!(sine > 0)) {
            return 0;
        }
        boolean southern = moment.site().southern();
        LocalDate date = southern ? moment.date().plusMonths(HALF_YEAR) : moment.date();
        double a = apparent.on(date) * (southern ? distanceCorrection(moment.position()) : 1);
        return a * Math.exp(-extinction.on(date) / sine);
    }

    /**
     * Half a year later the distance r is 2 − r, so A shifted by half a year needs the factor ((2 − r)/r)². Derived here.
     */
    private static double distanceCorrection(SunPosition sun) {
        double r = sun.distanceAstronomicalUnits();
        return Math.pow((2 - r) / r, 2);
    }
}
