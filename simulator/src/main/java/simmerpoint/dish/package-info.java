/**
 * The dish as it is planned: the paraboloid it follows and how that is cut into panels. Its rooms: {@code cut} has one
 * class per cut and the surfaces, {@code mesh} reads dishes that somebody else drew, {@code mirror} has the mirrors and
 * their materials, {@code built} what becomes of a plan in a maker's hands. Nothing here knows where the sun is nor what
 * stands at the focus, and nothing follows a ray.
 */
package simmerpoint.dish;
