/**
 * The dish as planned: the paraboloid and how it is cut into panels. Sub-packages: {@code cut} has one class per cut
 * and its surface, {@code mesh} reads meshes, {@code mirror} has mirrors and their materials, {@code shape} what a dish differs from its plan all over, {@code built} the dish as
 * built, with its errors. Nothing here depends on the sun's position or on the target, and nothing traces a ray.
 */
package simmerpoint.dish;
