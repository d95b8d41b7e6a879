/**
 * Charts and what they are made of: scales, round marks, a plot with its axes, keys. Each is a {@link simmerpoint.drawing.Drawing} of
 * results; none knows where it is drawn.
 */
package simmerpoint.drawing.chart;
