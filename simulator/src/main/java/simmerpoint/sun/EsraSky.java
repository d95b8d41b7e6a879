package simmerpoint.sun;

/**
 * Beam through air of known Linke turbidity, by C. Rigollier, O. Bauer and L. Wald, On the clear sky model of the ESRA,
 * Solar Energy 68 (2000) 33-48, with the Rayleigh optical depth of F. Kasten, Solar Energy 56 (1996) 239-244:
 * beam = E0 exp(−0.8662 T m d), T the Linke turbidity, m the absolute air mass,
 * 1/d = 6.6296 + 1.7513 m − 0.1202 m² + 0.0065 m³ − 0.00013 m⁴ up to m = 20 and 10.4 + 0.718 m beyond (the two meet
 * within 0.1 %). E0 = 1367 W/m² ÷ distance². The elevation is raised by the model's own refraction, so it takes the
 * one without air. How well the turbidity is known matters most: one unit more or less is a sixth of the beam 30°
 * high.
 *
 * @param turbidity the air through the year
 */
public record EsraSky(LinkeTurbidity turbidity) implements ClearSky {
    private static final double PER_TURBIDITY = 0.8662;
    private static final double LAST_OF_POLYNOMIAL = 20;

    /** The sky of a {@code setting} by the monthly table. */
    public static EsraSky of(AirType setting) {
        return new EsraSky(LinkeTurbidity.of(setting));
    }

    /**
     * The sky in which {@code beamWattsPerSquareMetre} is just what arrives at {@code moment}, so that the rest of the
     * day follows from one measurement.
     *
     * @throws IllegalArgumentException if the sun is not up, or no air from {@link LinkeTurbidity#SMALLEST} to
     *     {@link LinkeTurbidity#LARGEST} gives that beam
     */
    public static EsraSky matching(double beamWattsPerSquareMetre, SunMoment moment) {
        if (!(moment.position().isUp() && moment.position().geometricElevationRadians() > 0)) {
            throw new IllegalArgumentException("no beam can be measured while the sun is down");
        }
        double above = above(moment.position());
        double value = Math.log(above / beamWattsPerSquareMetre) / depthPerTurbidity(moment);
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
        double linke = turbidity.on(moment.date(), moment.place());
        return above(moment.position()) * Math.exp(-linke * depthPerTurbidity(moment));
    }

    private static double above(SunPosition sun) {
        return Extraterrestrial.beam(Extraterrestrial.WORLD_RADIATION_CENTRE, sun);
    }

    private static double depthPerTurbidity(SunMoment moment) {
        return depthPerTurbidity(
                moment.position().geometricElevationRadians(), moment.place().altitudeMetres());
    }

    /**
     * Optical depth of the way through the air per unit of turbidity, at an elevation without air (rad) and height
     * (m).
     */
    static double depthPerTurbidity(double geometricElevation, double altitudeMetres) {
        double seen = Math.min(geometricElevation + refraction(geometricElevation), Math.PI / 2);
        double m = AirMass.absolute(Math.max(seen, 0), altitudeMetres);
        return PER_TURBIDITY * m * rayleighDepth(m);
    }

    private static double rayleighDepth(double m) {
        if (m > LAST_OF_POLYNOMIAL) {
            return 1 / (10.4 + 0.718 * m);
        }
        return 1 / (6.6296 + m * (1.7513 + m * (-0.1202 + m * (0.0065 - m * 0.00013))));
    }

    /** Refraction, rad, for an elevation without air, rad (Rigollier, Bauer and Wald 2000). */
    private static double refraction(double h) {
        return 0.061359 * (0.1594 + h * (1.123 + h * 0.065656)) / (1 + h * (28.9344 + h * 277.3971));
    }
}
