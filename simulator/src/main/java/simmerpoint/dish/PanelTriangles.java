package simmerpoint.dish;

/**
 * Panels as triangles in the dish frame. The arrays are not copied; nobody changes them.
 *
 * @param corners nine numbers per triangle: three corners, x y z in turn, m
 * @param owners the panel each triangle belongs to
 */
public record PanelTriangles(double[] corners, int[] owners) {}
