package simmerpoint.safety.parked;

import java.time.ZonedDateTime;

/**
 * One moment of a parked dish.
 *
 * @param time by the clock of the place
 * @param sunElevationRadians height of the sun
 * @param offAxisRadians angle between the sun and the dish's axis
 * @param spot the light then
 */
public record ParkedHour(ZonedDateTime time, double sunElevationRadians, double offAxisRadians, ParkedSpot spot) {}
