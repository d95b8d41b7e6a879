/**
 * Points, unit directions, rotations, poses and flat polygons, and the two frames everything is told in. All
 * lengths are metres, all angles radians, all frames right-handed. Nothing here knows of light, mirrors or
 * pans: a shape that means a part of the cooker belongs where that part lives.
 */
package simmerpoint.geometry;
