/**
 * What stands at the focus: a level pan with underside, wall, lid and finish, or a bare disc for plain
 * optics. Only shapes and surfaces as they are made; where the thing stands belongs to the set-up, what lands
 * on it to the target, and how it warms up to the heat.
 */
package simmerpoint.pan;
