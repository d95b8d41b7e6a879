package simmerpoint.sun;

import java.time.Month;

/**
 * Beam through a standard atmosphere of 23 km visibility by H. C. Hottel, Solar Energy 18 (1976) 129-134, as in J. A.
 * Duffie and W. A. Beckman, Solar Engineering of Thermal Processes, section 2.8 (coefficients from memory): share =
 * r0 a0 + r1 a1 exp(−rk k / sin h), a0 = 0.4237 − 0.00821 (6 − A)², a1 = 0.5055 + 0.00595 (6.5 − A)², k = 0.2711 +
 * 0.01858 (2.5 − A)², h the elevation, A the height in km, up to 2.5; r by {@link Climate}. Beam = share × 1367 W/m²
 * ÷ distance².
 */
public record HottelSky() implements ClearSky {
    private static final double METRES_PER_KILOMETRE = 1000;
    private static final double TROPIC = Math.toRadians(23.44);
    private static final double SUBARCTIC = Math.toRadians(60);

    /** Climates with their three factors (Duffie and Beckman, table in section 2.8, from memory). */
    enum Climate {
        /** The formula without factors: the standard atmosphere. */
        STANDARD(1, 1, 1),
        TROPICAL(0.95, 0.98, 1.02),
        MID_LATITUDE_SUMMER(0.97, 0.99, 1.02),
        SUBARCTIC_SUMMER(0.99, 0.99, 1.01),
        MID_LATITUDE_WINTER(1.03, 1.01, 1.00);

        private final double r0;
        private final double r1;
        private final double rk;

        Climate(double r0, double r1, double rk) {
            this.r0 = r0;
            this.r1 = r1;
            this.rk = rk;
        }

        /** The climate of a moment; the borders (tropics, 60°, April to September) are ours. */
        static Climate of(SunMoment moment) {
            double latitude = Math.abs(moment.site().latitudeRadians());
            if (latitude < TROPIC) {
                return TROPICAL;
            }
            Month month = moment.date().getMonth();
            boolean northernSummer = month.compareTo(Month.APRIL) >= 0 && month.compareTo(Month.SEPTEMBER) <= 0;
            if (northernSummer == moment.site().southern()) {
                return MID_LATITUDE_WINTER;
            }
            return latitude < SUBARCTIC ? MID_LATITUDE_SUMMER : SUBARCTIC_SUMMER;
        }
    }

    @Override
    public String describe() {
        return "air of 23 km visibility by Hottel (1976)";
    }

    @Override
    public double highestAltitudeMetres() {
        return 2500;
    }

    @Override
    public double beamWattsPerSquareMetre(SunMoment moment) {
        double sine = Math.sin(moment.position().geometricElevationRadians());
        if (!(sine > 0)) {
            return 0;
        }
        double height = Math.min(moment.site().altitudeMetres(), highestAltitudeMetres());
        return transmittance(Climate.of(moment), sine, height)
                * Extraterrestrial.beam(Extraterrestrial.WORLD_RADIATION_CENTRE, moment.position());
    }

    /** Transmittance of the beam for the sine of the elevation and an altitude in metres. */
    static double transmittance(Climate climate, double sineOfElevation, double altitudeMetres) {
        double km = altitudeMetres / METRES_PER_KILOMETRE;
        double a0 = 0.4237 - 0.00821 * square(6 - km);
        double a1 = 0.5055 + 0.00595 * square(6.5 - km);
        double k = 0.2711 + 0.01858 * square(2.5 - km);
        return climate.r0 * a0 + climate.r1 * a1 * Math.exp(-climate.rk * k / sineOfElevation);
    }

    private static double square(double x) {
        return x * x;
    }
}
