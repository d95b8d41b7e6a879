/**
 * Dishes drawn as a mesh of flat polygons: reading and checking an OBJ file, triangles, and the surface that light meets.
 * All coordinates are metres in the dish frame.
 */
package simmerpoint.dish.mesh;
