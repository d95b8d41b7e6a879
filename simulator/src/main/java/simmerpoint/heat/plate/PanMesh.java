package simmerpoint.heat.plate;

/**
 * The sheet of a round pan in cells: rings of the bottom from the middle outwards, then rings of the wall from the bottom upwards,
 * each cut into the same sectors. Sector 0 begins at +x and they go over +y. A cell's number is ring · sectors + sector.
 *
 * @param radius of the bottom, m
 * @param height of the wall, m; 0 for a bare disc
 * @param bottomRings rings of the bottom
 * @param wallRings rings of the wall; 0 for a bare disc
 * @param sectors 1 where nothing changes around the pan, else at least 3
 */
public record PanMesh(double radius, double height, int bottomRings, int wallRings, int sectors) {
    private static final int BOTTOM_RINGS = 16;
    private static final int WALL_RINGS = 4;
    private static final int SECTORS = 24;

    /** Checks the counts. */
    public PanMesh {
        if (bottomRings < 1 || wallRings < 0 || sectors < 1 || sectors == 2) {
            throw new IllegalArgumentException("a mesh of " + bottomRings + ", " + wallRings + ", " + sectors);
        }
    }

    /** Fine enough for traced light on a pan of that size. */
    public static PanMesh of(double radius, double height) {
        return new PanMesh(radius, height, BOTTOM_RINGS, WALL_RINGS, SECTORS);
    }

    /** Number of rings. */
    public int rings() {
        return bottomRings + wallRings;
    }

    /** Number of cells. */
    public int cells() {
        return rings() * sectors;
    }

    /** Whether a ring belongs to the bottom. */
    public boolean isBottom(int ring) {
        return ring < bottomRings;
    }

    /** Width of a ring along the sheet, m. */
    public double width(int ring) {
        return isBottom(ring) ? radius / bottomRings : height / wallRings;
    }

    /** Radius of the middle of a ring, m. */
    public double middleRadius(int ring) {
        return isBottom(ring) ? (ring + 0.5) * width(ring) : radius;
    }

    /** Height of the middle of a ring above the underside, m. */
    public double middleHeight(int ring) {
        return isBottom(ring) ? 0 : (ring - bottomRings + 0.5) * width(ring);
    }

    /** Length of the border between a cell and the next ring outwards or upwards, m. */
    double outerBorder(int ring) {
        double edge = isBottom(ring) ? (ring + 1) * width(ring) : radius;
        return 2 * Math.PI * edge / sectors;
    }

    /** Distance between the middles of neighbours in a ring, m. */
    double around(int ring) {
        return 2 * Math.PI * middleRadius(ring) / sectors;
    }

    /** Area of one cell, m². */
    public double area(int ring) {
        return width(ring) * around(ring);
    }

    /** Angle of the middle of a sector, rad. */
    public double angle(int sector) {
        return 2 * Math.PI * (sector + 0.5) / sectors;
    }
}
