/**
 * Two designs held against each other: one is kept as it is, the other changed. Not here: tracing them, and how light is
 * drawn.
 */
package simmerpoint.viewer.comparison;
