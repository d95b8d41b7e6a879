package simmerpoint.target;

/**
 * A rectangular grid of cells.
 *
 * @param columns cells along the first axis
 * @param rows cells along the second axis
 * @param cellWidth m
 * @param cellHeight m
 * @param firstMin lower border on the first axis, m
 * @param secondMin lower border on the second axis, m
 * @param inverseCellWidth 1 ÷ cellWidth
 * @param inverseCellHeight 1 ÷ cellHeight
 */
record Grid(
        int columns,
        int rows,
        double cellWidth,
        double cellHeight,
        double firstMin,
        double secondMin,
        double inverseCellWidth,
        double inverseCellHeight) {
    /** Half the side of the plane's grid, in radii of the target. */
    private static final double HALF_SIDE = 1.5;

    private static final int CELLS_PER_RADIUS = 40;
    private static final int CELLS_PER_PEAK_RADIUS = 4;

    private Grid(int columns, int rows, double cellWidth, double cellHeight, double firstMin, double secondMin) {
        this(columns, rows, cellWidth, cellHeight, firstMin, secondMin, 1 / cellWidth, 1 / cellHeight);
    }

    /** A square grid of square cells about the target's centre, fine enough for target and peak disc. */
    static Grid ofPlane(double radius, double peakDiscRadius) {
        double cell = Math.min(radius / CELLS_PER_RADIUS, peakDiscRadius / CELLS_PER_PEAK_RADIUS);
        int half = (int) Math.ceil(HALF_SIDE * radius / cell - 1e-9);
        return new Grid(2 * half, 2 * half, cell, cell, -half * cell, -half * cell);
    }

    /** The lid: as wide as the pan. */
    static Grid ofLid(double radius) {
        double cell = radius / CELLS_PER_RADIUS;
        return new Grid(2 * CELLS_PER_RADIUS, 2 * CELLS_PER_RADIUS, cell, cell, -radius, -radius);
    }

    /** The wall unrolled: once round, from the underside to the lid. */
    static Grid ofWall(double radius, double height) {
        int round = 120;
        double width = 2 * Math.PI * radius / round;
        int up = Math.max(4, Math.min(400, (int) Math.round(height / width)));
        return new Grid(round, up, width, height / up, 0, 0);
    }

    /** The wall as bands of the same height as {@link #ofWall}, once round each. */
    static Grid ofWallBands(double radius, double height) {
        Grid fine = ofWall(radius, height);
        return new Grid(1, fine.rows, 2 * Math.PI * radius, fine.cellHeight, 0, 0);
    }

    int cells() {
        return columns * rows;
    }

    double cellArea() {
        return cellWidth * cellHeight;
    }

    /** Index of the cell at a point, or −1 beyond the grid. */
    int cellAt(double first, double second) {
        double i = (first - firstMin) * inverseCellWidth;
        double j = (second - secondMin) * inverseCellHeight;
        return i >= 0 && j >= 0 && i < columns && j < rows ? ((int) j) * columns + ((int) i) : -1;
    }

    /** Indices of the cells at many points, twice {@code cells()} beyond the grid; branch-free. */
    void cellsOrOutside(float[] first, float[] second, int n, int[] out) {
        float firstFrom = (float) firstMin;
        float secondFrom = (float) secondMin;
        float perWidth = (float) inverseCellWidth;
        float perHeight = (float) inverseCellHeight;
        int lastColumn = columns - 1;
        int lastRow = rows - 1;
        int beyond = 2 * cells();
        for (int k = 0; k < n; k++) {
            int i = (int) ((first[k] - firstFrom) * perWidth + 1) - 1;
            int j = (int) ((second[k] - secondFrom) * perHeight + 1) - 1;
            int outside = (i | j | (lastColumn - i) | (lastRow - j)) >> 31;
            out[k] = ((j * columns + i) & ~outside) | (beyond & outside);
        }
    }

    double first(int i) {
        return firstMin + (i + 0.5) * cellWidth;
    }

    double second(int j) {
        return secondMin + (j + 0.5) * cellHeight;
    }
}
