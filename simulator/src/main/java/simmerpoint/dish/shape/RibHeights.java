package simmerpoint.dish.shape;

/** How far ribs lie above their plan. */
public interface RibHeights {
    /**
     * A place on a rib.
     *
     * @param height above the plan, m
     * @param slope of that along the rib
     */
    record RibPlace(double height, double slope) {}

    /** A place at some distance from the axis, m; rib k stands between sectors k − 1 and k. */
    RibPlace at(int rib, double radius);

    /** Those of so many ribs that follow a deformation of the whole dish. */
    static RibHeights of(Deformation whole, int ribs) {
        double[] cos = new double[ribs];
        double[] sin = new double[ribs];
        for (int k = 0; k < ribs; k++) {
            cos[k] = Math.cos(2 * Math.PI * k / ribs);
            sin[k] = Math.sin(2 * Math.PI * k / ribs);
        }
        return (rib, r) -> {
            Displacement at = whole.at(r * cos[rib], r * sin[rib]);
            return new RibPlace(at.height(), at.slopeX() * cos[rib] + at.slopeY() * sin[rib]);
        };
    }
}
