/** The window's backend of the layer of drawing: a canvas, its colours and its letters. Not here: what is drawn. */
package simmerpoint.viewer.canvas;
