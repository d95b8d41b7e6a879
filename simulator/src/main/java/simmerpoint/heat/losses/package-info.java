/**
 * Heat losses of a pan: convection, radiation, evaporation and conduction, and the uncertainty of their sum.
 */
package simmerpoint.heat.losses;
