package simmerpoint.scenario;

import java.time.ZonedDateTime;
import simmerpoint.sun.Place;
import simmerpoint.sun.SkySpread;

/**
 * Where and when, and what the sky lets through.
 *
 * @param place where on the earth
 * @param when the scenario's own instant, in the place's zone
 * @param sky the sky chosen, and how far models of it differ
 */
public record Outdoors(Place place, ZonedDateTime when, SkySpread sky) {}
