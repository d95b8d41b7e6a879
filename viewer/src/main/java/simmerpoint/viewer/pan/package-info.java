/**
 * The pan from below: light on its underside and wall, and what it gets as it is pulled back. What is drawn is a function
 * of plain records; those are made without a window. Not here: tracing, and designs held against each other.
 */
package simmerpoint.viewer.pan;
