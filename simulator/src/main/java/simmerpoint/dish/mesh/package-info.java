/**
 * Dishes given as a mesh of flat polygons: reading and checking an OBJ file, and its polygons as triangles. All
 * coordinates are metres in the dish frame.
 */
package simmerpoint.dish.mesh;
