package simmerpoint.dish.points;

/**
 * Points of a mirror as they were measured, x towards the dish's upper edge, y to the right of whoever stands behind it, z towards the sun
 * along the axis, m. The arrays are shared and not modified.
 *
 * @param x of every point
 * @param y of every point
 * @param z of every point
 */
public record MeasuredPoints(double[] x, double[] y, double[] z) {
    /** How many. */
    public int count() {
        return x.length;
    }

    /** Every so many-th of them. */
    MeasuredPoints everyOther(int step) {
        if (step == 1) {
            return this;
        }
        double[][] kept = new double[3][(count() + step - 1) / step];
        for (int i = 0; i < kept[0].length; i++) {
            kept[0][i] = x[i * step];
            kept[1][i] = y[i * step];
            kept[2][i] = z[i * step];
        }
        return new MeasuredPoints(kept[0], kept[1], kept[2]);
    }

    /** The same with the origin elsewhere. */
    MeasuredPoints movedBy(double dx, double dy, double dz) {
        double[][] moved = new double[3][count()];
        for (int i = 0; i < count(); i++) {
            moved[0][i] = x[i] + dx;
            moved[1][i] = y[i] + dy;
            moved[2][i] = z[i] + dz;
        }
        return new MeasuredPoints(moved[0], moved[1], moved[2]);
    }
}
