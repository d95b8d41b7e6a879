/**
 * Comparison of two designs side by side: one is kept, the other changes.
 */
package simmerpoint.viewer.comparison;
