/**
 * Shape that is not the plan: deformations, each a field of displacements along the dish's axis, and the surface that they make of a
 * planned one. Random errors are in {@code dish.built}.
 */
package simmerpoint.dish.shape;
