/**
 * How a doubt about what goes in becomes a range of what comes out: distributions, quasi-random draws, percentiles, and the share
 * of the variance that each cause brings. Knows numbers only: nothing of dishes, pans or files.
 */
package simmerpoint.uncertainty;
