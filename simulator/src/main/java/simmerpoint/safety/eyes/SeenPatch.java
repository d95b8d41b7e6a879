package simmerpoint.safety.eyes;

import simmerpoint.scenario.Scenario;

/**
 * The bright part of the mirror as eyes at a place of the yard see it: the reflected light there is brightness times solid angle, and
 * each mirror is as bright as the sun times its reflectance, so its solid angle is E/(ρ·DNI) suns (as in {@link Glare}). Rough
 * mirrors make it wider and duller, which the metric takes as less harmful.
 *
 * @param radians full angle of a round patch of that size, rad; 0 if none is seen
 * @param suns its brightness, in suns
 * @param harm what a glance does, by {@link RetinalMetric}: an indication
 */
public record SeenPatch(double radians, double suns, Harm harm) {
    /** What a glance does to eyes. */
    public enum Harm {
        /** Nothing is known. */
        NONE,
        /** It leaves an after-image. */
        AFTER_IMAGE,
        /** It may damage them for good. */
        DAMAGE
    }

    /** Seen where so much reflected light, W/m², falls. */
    public static SeenPatch of(Scenario scenario, double reflected) {
        Glare glare = Glare.of(scenario);
        double bright = glare.suns() * scenario.sun().beamWattsPerSquareMetre();
        if (!(reflected > 0 && bright > 0)) {
            return new SeenPatch(0, glare.suns(), Harm.NONE);
        }
        double radians = RetinalMetric.SUN * Math.sqrt(reflected / bright);
        return new SeenPatch(radians, glare.suns(), harm(glare.retina(), radians));
    }

    private static Harm harm(double retina, double radians) {
        if (retina > RetinalMetric.burnLimit(radians)) {
            return Harm.DAMAGE;
        }
        return retina > RetinalMetric.afterImageLimit(radians) ? Harm.AFTER_IMAGE : Harm.NONE;
    }
}
