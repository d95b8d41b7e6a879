package simmerpoint.safety;

import simmerpoint.geometry.Vec;
import simmerpoint.safety.field.YardLight;

/**
 * A place of the yard and its light.
 *
 * @param place x towards the sun, y right, z up, from the ground under the mount, m
 * @param light there
 */
public record HotPlace(Vec place, YardLight.Irradiance light) {
    /** Of a place. */
    static HotPlace of(YardLight light, Vec place) {
        return new HotPlace(place, light.new Probe().at(place));
    }
}
