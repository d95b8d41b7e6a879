/**
 * Points, unit directions, rotations, poses and flat polygons. Nothing here knows of light, mirrors or pans. All
 * lengths are metres, all angles radians, all frames right-handed.
 */
package simmerpoint.geometry;
