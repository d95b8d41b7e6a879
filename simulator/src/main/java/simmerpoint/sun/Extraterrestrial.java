package simmerpoint.sun;

/**
 * Extraterrestrial beam: solar constant ÷ distance², distance in astronomical units; it varies by ±3.3 % between January
 * and July. Every model uses the solar constant its coefficients were fitted with, not the current one (1361 W/m², IAU 2015
 * resolution B3).
 */
final class Extraterrestrial {
    /**
     * Solar constant of the World Radiation Centre, W/m²; used by Rigollier, Bauer and Wald and by Duffie and Beckman.
     */
    static final double WORLD_RADIATION_CENTRE = 1367;

    /** Solar constant in Meinel's formula, W/m². */
    static final double MEINEL = 1353;

    private Extraterrestrial() {}

    /** Extraterrestrial beam at the distance of {@code sun}, W/m², for a solar constant in W/m². */
    static double beam(double solarConstant, SunPosition sun) {
        double distance = sun.distanceAstronomicalUnits();
        return solarConstant / (distance * distance);
    }
}
