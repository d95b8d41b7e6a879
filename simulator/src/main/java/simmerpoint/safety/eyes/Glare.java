package simmerpoint.safety.eyes;

import simmerpoint.scenario.Scenario;

/**
 * What somebody sees who looks into the light of the mirror past the focus. Each mirror shows the sun, as bright as it is times
 * the mirror's reflectance, however far away the eye is; with the distance only the size of the bright patch changes. At ζ from
 * the focus of a perfect dish it has the solid angle E/(ρ·DNI) suns, E the flux there, so its angle is that of the sun times
 * f/(ζ cos²(ψ/2)) (derived here from the flux off the focus). Rough mirrors blur it, which the metric takes as less harmful.
 *
 * @param suns brightness of the patch in suns: the share of light that the mirror throws on
 * @param retina irradiance of the retina, W/cm², see {@link RetinalMetric}
 * @param burnAngle angle from which on the patch damages within a blink, rad; infinite if it never does
 * @param burnMetres up to this distance from the focus, in the worst direction, it is so wide, m; 0 if it never is
 * @param coneRadians half-angle about the axis, away from the dish, within which the light past the focus goes: the rim angle
 * @param lowestRadians elevation of the lowest of that light: below 0 it goes down to people
 */
public record Glare(
        double suns, double retina, double burnAngle, double burnMetres, double coneRadians, double lowestRadians) {
    private static final double WATTS_PER_CM2 = 1e-4;

    /** Of a dish aimed at its sun. */
    public static Glare of(Scenario scenario) {
        double f = scenario.dish().focalLengthMetres();
        double rim = scenario.dish().rimAngle();
        double highest = scenario.dish().parabola().rimAngle(scenario.dish().upperEdgeMetres());
        double suns = scenario.built().shares().largestReflected();
        double cornea = suns * scenario.sun().beamWattsPerSquareMetre() * WATTS_PER_CM2;
        double retina = RetinalMetric.retina(cornea, RetinalMetric.SUN);
        double angle = RetinalMetric.burnAngle(retina);
        double worst = f / Math.pow(Math.cos(rim / 2), 2);
        return new Glare(
                suns,
                retina,
                angle,
                worst * RetinalMetric.SUN / angle,
                rim,
                scenario.sun().elevationRadians() - highest);
    }
}
