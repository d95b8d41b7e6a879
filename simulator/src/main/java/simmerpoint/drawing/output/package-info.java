/**
 * Where drawings go: pictures by Java2D, pages as SVG with its style sheet. Each backend is a {@link simmerpoint.drawing.Canvas}; the
 * window has its own. Not here: what is drawn.
 */
package simmerpoint.drawing.output;
