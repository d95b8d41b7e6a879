package simmerpoint.dish;

/**
 * Panels as triangles in the dish frame. The arrays are shared and not modified.
 *
 * @param corners nine numbers per triangle: three corners, x y z in turn, m
 * @param owners the panel each triangle belongs to
 */
public record PanelTriangles(double[] corners, int[] owners) {}
