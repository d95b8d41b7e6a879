/**
 * What the pan or plane does to reflected light: its shadow on the mirrors, the light caught on each face, the flux maps,
 * the spot figures and the ledger. Heating of the water, sentences and drawings belong elsewhere.
 */
package simmerpoint.target;
