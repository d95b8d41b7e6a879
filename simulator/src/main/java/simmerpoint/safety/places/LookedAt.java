package simmerpoint.safety.places;

import java.util.OptionalDouble;
import simmerpoint.geometry.Vec;
import simmerpoint.safety.eyes.SeenPatch;
import simmerpoint.safety.field.Surface;
import simmerpoint.safety.field.YardLight;
import simmerpoint.safety.risk.Hazard;
import simmerpoint.safety.risk.Stuff;
import simmerpoint.scenario.Scenario;

/**
 * A place that somebody asks about.
 *
 * @param name what stands there
 * @param isAsked whether the scenario asks about it
 * @param stuff what it is made of
 * @param facing which way its lit side looks
 * @param place x towards the sun, y right, z up, from the ground under the mount, m
 * @param standing the light there with the pan in place
 * @param taken the same with the pan taken away
 * @param seen the mirror as eyes there see it, in the worse of both
 */
public record LookedAt(
        String name,
        boolean isAsked,
        Stuff stuff,
        Facing facing,
        Vec place,
        YardLight.Irradiance standing,
        YardLight.Irradiance taken,
        SeenPatch seen) {
    /** Light of the worse of both, mirrors and sun together, W/m². */
    public double worst() {
        return Math.max(standing.together(), taken.together());
    }

    /** Seconds until it is harmed in the worse of both; empty where the tables know of no harm. */
    public OptionalDouble harmed() {
        return stuff.harmed(worst());
    }

    /** Its surface, in the yard of {@code scenario}. */
    public Surface surface(Scenario scenario) {
        return new Surface(place, facing.normal(scenario, place));
    }

    /** The same thing in light of that flux alone, W/m². */
    public LookedAt in(double flux) {
        YardLight.Irradiance light = new YardLight.Irradiance(flux, flux, 0, 0);
        return new LookedAt(name, isAsked, stuff, facing, place, light, light, seen);
    }

    /** Whether it can smoulder if it is left for long, however soon or late it is harmed. */
    public boolean smoulders() {
        return stuff != Stuff.STONE && stuff != Stuff.SKIN && worst() > Hazard.SMOULDER.wattsPerSquareMetre();
    }
}
