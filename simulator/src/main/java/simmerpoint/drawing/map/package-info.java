/** Maps of flux: colours and their scale, where a map lies, what is marked on it and what the marks mean. */
package simmerpoint.drawing.map;
