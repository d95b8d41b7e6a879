/**
 * Makes a {@link simmerpoint.scenario.Scenario} of values: what is wrong with them is refused with file, line and key, what is
 * odd becomes a warning. Knows no text.
 */
package simmerpoint.scenario.checks;
