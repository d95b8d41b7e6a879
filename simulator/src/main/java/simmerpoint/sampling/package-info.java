/**
 * Streams of quasi-random numbers tied to the index of a ray, distributions as draw, density and inverse, and
 * estimates with their standard errors from independent replicates. What the numbers stand for (a place on a
 * mirror, a tilt, a place on the sun) is decided by whoever draws them. No stream here depends on a thread or
 * a clock.
 */
package simmerpoint.sampling;
