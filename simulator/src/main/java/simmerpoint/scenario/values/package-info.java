/**
 * The values of all keys of one scenario, immutable, with the text they were read from. A drag, {@code --vary} and a search set
 * values here; nothing is checked across keys.
 */
package simmerpoint.scenario.values;
