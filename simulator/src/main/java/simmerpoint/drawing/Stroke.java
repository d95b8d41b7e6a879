package simmerpoint.drawing;

/**
 * How a line is drawn. Ends are round where there are no dashes, joins always.
 *
 * @param ink its colour
 * @param width units
 * @param dashes lengths of dashes and gaps in turn, units; empty for an unbroken line
 */
public record Stroke(Ink ink, double width, double... dashes) {}
