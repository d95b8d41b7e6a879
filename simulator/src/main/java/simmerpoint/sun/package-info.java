/**
 * The sun: sun shapes, position, and clear-sky beam irradiance.
 *
 * <p><b>One convention for all shapes.</b> Beam irradiance is what falls on a flat sensor that looks at the sun's
 * centre, so light from the angle θ off the centre counts with cos θ: a ray's angle has the density
 * B(θ) sin θ cos θ over its integral, B the radiance. In terms of q = sin²θ the density is B. A uniform disc of half-angle
 * θs therefore has q uniform on 0 to sin²θs. Neglecting cos θ would change nothing by more than 0.1 % within 44 mrad.
 */
package simmerpoint.sun;
