package simmerpoint.dish.shape;

/** How far ribs lie above their plan. */
public interface RibHeights {
    /** Height of a rib at a distance from the axis, m; rib k stands between sectors k − 1 and k. */
    double height(int rib, double radius);

    /** Its slope there. */
    double slope(int rib, double radius);

    /** Those of so many ribs that follow a deformation of the whole dish. */
    static RibHeights of(Deformation whole, int ribs) {
        double[] cos = new double[ribs];
        double[] sin = new double[ribs];
        for (int k = 0; k < ribs; k++) {
            cos[k] = Math.cos(2 * Math.PI * k / ribs);
            sin[k] = Math.sin(2 * Math.PI * k / ribs);
        }
        return new RibHeights() {
            @Override
            public double height(int rib, double r) {
                return whole.at(r * cos[rib], r * sin[rib]).height();
            }

            @Override
            public double slope(int rib, double r) {
                Displacement at = whole.at(r * cos[rib], r * sin[rib]);
                return at.slopeX() * cos[rib] + at.slopeY() * sin[rib];
            }
        };
    }
}
