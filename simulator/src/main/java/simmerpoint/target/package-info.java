/**
 * What the pan or plane does to reflected light: the shadow it throws, the light it catches on each surface,
 * the flux maps, the spot figures, and the ledger in which every watt is counted where it ends. What absorbed
 * watts do to the water, and how figures are worded or drawn, is told elsewhere.
 */
package simmerpoint.target;
