/** Patterns to cut by: pages of paper at full size, sheets with the pieces laid out on them. */
package simmerpoint.drawing.pattern;
