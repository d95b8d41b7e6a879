/**
 * Points, unit vectors, rotations, poses and a bounding volume hierarchy of triangles. All lengths are metres, all angles
 * radians, all frames right-handed. Shapes of parts of the cooker belong to the packages of those parts.
 */
package simmerpoint.geometry;
