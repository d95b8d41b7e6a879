/**
 * The yard: the cooker from its side, with handles that move it, and the dish seen along its axis, panel by panel. Not here: what is
 * drawn, which is in {@code simmerpoint.drawing.cooker}.
 */
package simmerpoint.viewer.yard;
