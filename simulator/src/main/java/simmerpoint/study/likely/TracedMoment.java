package simmerpoint.study.likely;

import simmerpoint.heat.AbsorbedLight;
import simmerpoint.sun.SunMoment;

/**
 * What the cooker exactly as given gets at one moment.
 *
 * @param moment when, and where the sun stands
 * @param beamWattsPerSquareMetre beam that it was traced in, above 0, W/m²
 * @param absorbed what its pan takes up
 */
public record TracedMoment(SunMoment moment, double beamWattsPerSquareMetre, AbsorbedLight absorbed) {
    double elevation() {
        return moment.position().elevationRadians();
    }
}
