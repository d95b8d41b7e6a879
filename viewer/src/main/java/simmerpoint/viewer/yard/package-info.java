/**
 * The yard, drawn to scale: the cooker from its side, with things to take hold of, and the dish seen along its axis, panel by
 * panel. What is drawn is worked out first, as plain values; painters only paint them.
 */
package simmerpoint.viewer.yard;
