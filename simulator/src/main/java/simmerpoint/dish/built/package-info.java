/**
 * A dish as it was built: what a maker's tolerances do to a plan and its mirror, and the tilts of the panels, drawn once for
 * one built dish. Light is cast on built dishes only.
 */
package simmerpoint.dish.built;
