package simmerpoint.sun;

/**
 * A constant beam whenever the sun is up. To extrapolate one measured beam to the rest of the day use {@link
 * EsraSky#matching}.
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
