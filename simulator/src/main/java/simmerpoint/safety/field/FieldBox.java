package simmerpoint.safety.field;

import simmerpoint.geometry.Vec;

/**
 * A box of the yard in cubic cells.
 *
 * @param corner its corner with the least x, y and z, m
 * @param cellMetres edge of a cell, above 0
 * @param nx cells along x
 * @param ny cells along y
 * @param nz cells along z
 */
public record FieldBox(Vec corner, double cellMetres, int nx, int ny, int nz) {
    /** No box has more cells: a tally of them takes 16 MB and the field 20 MB. */
    public static final int MOST_CELLS = 1_000_000;

    /** Checks the number of cells. */
    public FieldBox {
        if (!(cellMetres > 0 && nx > 0 && ny > 0 && nz > 0 && (double) nx * ny * nz <= MOST_CELLS)) {
            throw new IllegalArgumentException(
                    "a box of " + nx + " × " + ny + " × " + nz + " cells of " + cellMetres + " m");
        }
    }

    /** The box from {@code low} to {@code high} with cells as small as {@code cells} of them allow, but not below {@code least}. */
    public static FieldBox around(Vec low, Vec high, int cells, double least) {
        Vec size = high.minus(low);
        double cell = Math.max(least, Math.cbrt(size.x() * size.y() * size.z() / cells));
        while (count(size.x(), cell) * count(size.y(), cell) * count(size.z(), cell) > cells) {
            cell *= 1.02;
        }
        return new FieldBox(
                low, cell, (int) count(size.x(), cell), (int) count(size.y(), cell), (int) count(size.z(), cell));
    }

    private static double count(double length, double cell) {
        return Math.max(1, Math.ceil(length / cell - 1e-9));
    }

    /** Number of cells. */
    public int cells() {
        return nx * ny * nz;
    }

    /** Number of the cell that is the i-th, j-th, k-th along x, y, z. */
    public int index(int i, int j, int k) {
        return (k * ny + j) * nx + i;
    }

    /** The middle of that cell. */
    public Vec middle(int i, int j, int k) {
        return corner.plus(new Vec(i + 0.5, j + 0.5, k + 0.5).times(cellMetres));
    }

    /** Volume of a cell, m³. */
    public double cellVolume() {
        return cellMetres * cellMetres * cellMetres;
    }

    /** Whether a place lies within it. */
    public boolean holds(Vec place) {
        return isWithin(place.x() - corner.x(), nx)
                && isWithin(place.y() - corner.y(), ny)
                && isWithin(place.z() - corner.z(), nz);
    }

    private boolean isWithin(double metres, int cells) {
        return metres >= 0 && metres <= cells * cellMetres;
    }
}
