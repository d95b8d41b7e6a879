/**
 * The one description of every key of the scenario file (keys.tsv): name, unit, range, default and meaning, for reader, checks,
 * help, {@code --vary} and window; and what one typed value of a key means.
 */
package simmerpoint.scenario.keys;
