package simmerpoint.target;

import simmerpoint.sampling.Estimate;

/**
 * What becomes of the light on one zone of a dish, W.
 *
 * @param name of the zone
 * @param incident on its mirrors
 * @param reflected as a beam, the pan's shadow and the mirrors' losses taken off
 * @param caught of that by the target
 */
public record ZoneLight(String name, Estimate incident, Estimate reflected, Estimate caught) {}
