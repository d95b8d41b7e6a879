package simmerpoint.dish.cut;

/** A flat tile seen from above in its own plane, and the plan lattice its centres stand on. */
@SuppressWarnings("ImmutableEnumChecker") // Its arrays are never written after it is made.
public enum TileShape {
    /** Square, sides along x and y; centres in rows and columns. */
    SQUARE(4, Math.sqrt(0.5), Math.PI / 4, new double[] {1, 0, 0, 1}) {
        @Override
        boolean inside(double x, double y, double half) {
            return Math.abs(x) <= half && Math.abs(y) <= half;
        }
    },

    /** Hexagon with two flats square to x; centres in a honeycomb. */
    HEXAGON(6, 1 / Math.sqrt(3), Math.PI / 6, new double[] {1, 0, 0.5, TileLattice.ROW, -0.5, TileLattice.ROW}) {
        @Override
        boolean inside(double x, double y, double half) {
            double a = 0.5 * x;
            double b = TileLattice.ROW * y;
            return Math.abs(x) <= half && Math.abs(a + b) <= half && Math.abs(a - b) <= half;
        }
    };

    private final double[] cornerX;
    private final double[] cornerY;
    /** Directions square to the flats, x and y in turn. */
    private final double[] flats;

    TileShape(int corners, double cornerRadius, double firstAngle, double[] flats) {
        cornerX = new double[corners];
        cornerY = new double[corners];
        for (int k = 0; k < corners; k++) {
            double angle = firstAngle + k * 2 * Math.PI / corners;
            cornerX[k] = cornerRadius * Math.cos(angle);
            cornerY[k] = cornerRadius * Math.sin(angle);
        }
        this.flats = flats;
    }

    /** Whether (x, y) in the tile's plane, from its centre, lies on a tile of half width {@code half}. */
    abstract boolean inside(double x, double y, double half);

    int corners() {
        return cornerX.length;
    }

    /** Corner {@code k} of a tile of width 1, from its centre. */
    double cornerX(int k) {
        return cornerX[k];
    }

    /** Corner {@code k} of a tile of width 1, from its centre. */
    double cornerY(int k) {
        return cornerY[k];
    }

    /** Area of a tile of width 1. */
    double area() {
        return this == SQUARE ? 1 : TileLattice.ROW;
    }

    /**
     * How much wider than its lattice cell a tile of width 1 looks from above when it is tipped to the plane {@code tip}:
     * above 1 where a corner sticks out.
     */
    double widthInPlan(TangentPlane tip) {
        double widest = 0;
        for (int f = 0; f < flats.length; f += 2) {
            for (int k = 0; k < corners(); k++) {
                double px = tip.planX(cornerX[k], cornerY[k]);
                double py = tip.planY(cornerX[k], cornerY[k]);
                widest = Math.max(widest, 2 * (flats[f] * px + flats[f + 1] * py));
            }
        }
        return widest;
    }
}
