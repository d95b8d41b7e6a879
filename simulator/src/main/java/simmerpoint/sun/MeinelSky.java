package simmerpoint.sun;

/**
 * Beam through clean air by A. B. and M. P. Meinel, Applied Solar Energy (1976), with the term for height by E. G.
 * Laue, Solar Energy 13 (1970) 43-57, both from memory: beam = 1353 W/m² [(1 − 0.14 H) 0.7^(m^0.678) + 0.14 H], m the
 * relative air mass, H the height above the sea in km. Ours: times 1 ÷ distance². Neglects haze, season and place; made for
 * the first few kilometres.
 */
public record MeinelSky() implements ClearSky {
    private static final double METRES_PER_KILOMETRE = 1000;

    @Override
    public String describe() {
        return "clean air by Meinel (1976)";
    }

    @Override
    public double highestAltitudeMetres() {
        return 3000;
    }

    @Override
    public double beamWattsPerSquareMetre(SunMoment moment) {
        SunPosition sun = moment.position();
        if (!sun.isUp()) {
            return 0;
        }
        double height = Math.min(moment.site().altitudeMetres(), highestAltitudeMetres());
        double transmittance = transmittance(AirMass.relative(sun.elevationRadians()), height);
        return transmittance * Extraterrestrial.beam(Extraterrestrial.MEINEL, sun);
    }

    /** Transmittance of the beam for a relative air mass down to {@code altitudeMetres}. */
    static double transmittance(double airMass, double altitudeMetres) {
        return raised(Math.pow(0.7, Math.pow(airMass, 0.678)), altitudeMetres);
    }

    /** Transmittance down to {@code altitudeMetres} where it is {@code transmittance} down to the sea. */
    static double raised(double transmittance, double altitudeMetres) {
        double raised = 0.14 * altitudeMetres / METRES_PER_KILOMETRE;
        return (1 - raised) * transmittance + raised;
    }
}
