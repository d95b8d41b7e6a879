/**
 * Quasi-random numbers tied to the index of a ray, distributions (density, cumulative, inverse), and estimates with
 * standard errors from independent replicates; curves through given points. Nothing here depends on a thread or a clock.
 */
package simmerpoint.sampling;
