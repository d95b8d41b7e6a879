package simmerpoint.sun;

/**
 * The same beam whenever the sun is up: for a figure that somebody wants to calculate with. For a beam measured once,
 * from which the rest of the day shall follow, use {@link EsraSky#matching}.
 *
 * @param wattsPerSquareMetre direct normal irradiance, W/m², above 0, less than 1500
 */
public record FixedBeam(double wattsPerSquareMetre) implements ClearSky {
    /** Checks the range. */
    public FixedBeam {
        if (!(wattsPerSquareMetre > 0 && wattsPerSquareMetre < 1500)) {
            throw new IllegalArgumentException("beam " + wattsPerSquareMetre + " W/m2 is outside 0 to 1500");
        }
    }

    @Override
    public String describe() {
        return "beam of " + Math.round(wattsPerSquareMetre) + " W/m² whenever the sun is up";
    }

    @Override
    public double beamWattsPerSquareMetre(SunMoment moment) {
        return moment.position().isUp() ? wattsPerSquareMetre : 0;
    }
}
