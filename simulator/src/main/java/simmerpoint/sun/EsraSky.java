package simmerpoint.sun;

/**
 * Beam through air of known Linke turbidity, by C. Rigollier, O. Bauer and L. Wald, On the clear sky model of the ESRA,
 * Solar Energy 68 (2000) 33-48, with the Rayleigh optical depth of F. Kasten, Solar Energy 56 (1996) 239-244:
 * beam = E0 exp(−0.8662 T m d), T the Linke turbidity, m the absolute air mass,
 * 1/d = 6.6296 + 1.7513 m − 0.1202 m² + 0.0065 m³ − 0.00013 m⁴ up to m = 20 and 10.4 + 0.718 m beyond (the two meet
 * within 0.1 %). E0 = 1367 W/m² ÷ distance². Input is the geometric elevation, to which the model adds its own refraction.
 * The turbidity dominates the error: one unit changes the beam by a sixth at 30° elevation.
 *
 * @param turbidity the air through the year
 */
public record EsraSky(LinkeTurbidity turbidity) implements ClearSky {
    private static final double PER_TURBIDITY = 0.8662;
    private static final double LAST_OF_POLYNOMIAL = 20;

    /** The sky of an air type by the monthly table. */
    public static EsraSky of(AirType type) {
        return new EsraSky(LinkeTurbidity.of(type));
    }

    /**
     * The sky with the measured beam {@code beamWattsPerSquareMetre} at {@code moment}.
     *
     * @throws IllegalArgumentException if the sun is not up, or no air from {@link LinkeTurbidity#SMALLEST} to
     *     {@link LinkeTurbidity#LARGEST} gives that beam
     */
    public static EsraSky matching(double beamWattsPerSquareMetre, SunMoment moment) {
        if (!(moment.position().isUp() && moment.position().geometricElevationRadians() > 0)) {
            throw new IllegalArgumentException("no beam can be measured while the sun is down");
        }
        double above = above(moment.position());
        double value = Math.log(above / beamWattsPerSquareMetre) / opticalDepthPerTurbidity(moment);
        if (!(value >= LinkeTurbidity.SMALLEST && value <= LinkeTurbidity.LARGEST)) {
            throw new IllegalArgumentException("no clear air gives a beam of " + beamWattsPerSquareMetre
                    + " W/m2 at this height of the sun: it would take a turbidity of " + value);
        }
        return new EsraSky(LinkeTurbidity.constant(value));
    }

    @Override
    public String describe() {
        return "clear sky by Rigollier, Bauer and Wald (2000), " + turbidity.describe();
    }

    @Override
    public double beamWattsPerSquareMetre(SunMoment moment) {
        if (!moment.position().isUp()) {
            return 0;
        }
        double linke = turbidity.on(moment.date(), moment.site());
        return above(moment.position()) * Math.exp(-linke * opticalDepthPerTurbidity(moment));
    }

    /** Share that comes through air of that turbidity, for a geometric elevation. */
    static double transmittance(double turbidity, double elevationRadians, double altitudeMetres) {
        return Math.exp(-turbidity * opticalDepthPerTurbidity(elevationRadians, altitudeMetres));
    }

    private static double above(SunPosition sun) {
        return Extraterrestrial.beam(Extraterrestrial.WORLD_RADIATION_CENTRE, sun);
    }

    /** Optical depth of the path through the air per unit of turbidity. */
    private static double opticalDepthPerTurbidity(SunMoment moment) {
        return opticalDepthPerTurbidity(
                moment.position().geometricElevationRadians(), moment.site().altitudeMetres());
    }

    private static double opticalDepthPerTurbidity(double geometric, double altitudeMetres) {
        double seen = Math.min(geometric + refraction(geometric), Math.PI / 2);
        double m = AirMass.absolute(Math.max(seen, 0), altitudeMetres);
        return PER_TURBIDITY * m * rayleighDepth(m);
    }

    private static double rayleighDepth(double m) {
        if (m > LAST_OF_POLYNOMIAL) {
            return 1 / (10.4 + 0.718 * m);
        }
        return 1 / (6.6296 + m * (1.7513 + m * (-0.1202 + m * (0.0065 - m * 0.00013))));
    }

    /** Refraction, rad, for a geometric elevation, rad (Rigollier, Bauer and Wald 2000). */
    private static double refraction(double h) {
        return 0.061359 * (0.1594 + h * (1.123 + h * 0.065656)) / (1 + h * (28.9344 + h * 277.3971));
    }
}
