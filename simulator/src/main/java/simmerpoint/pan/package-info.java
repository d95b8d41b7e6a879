/**
 * The object at the focus: a level pan with underside, wall, lid and finish, or a bare disc for plain optics. Shape and
 * surface only; its position belongs to package setup, the light on it to target, its heating to heat.
 */
package simmerpoint.pan;
