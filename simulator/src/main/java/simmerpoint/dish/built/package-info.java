/**
 * A dish as built: what a maker's tolerances do to a plan and its mirror, and the tilts of the panels, drawn once per
 * dish. Light is cast on built dishes only.
 */
package simmerpoint.dish.built;
