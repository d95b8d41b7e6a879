package simmerpoint.sampling;

import java.util.Arrays;

/**
 * A smooth curve through given points that never swings beyond two neighbours: cubic pieces with slopes by F. N. Fritsch
 * and J. Butland, "A method for constructing local monotone piecewise cubic interpolants", SIAM J. Sci. Stat. Comput. 5,
 * 1984, 300-304 (weighted harmonic mean of the two neighbouring slopes, 0 where they differ in sign; from memory). Level
 * beyond its ends. Where the points are smooth its error is of the third order in their distance.
 */
public final class MonotoneCubic {
    private final double[] x;
    private final double[] y;
    private final double[] slope;

    /** Through {@code y} at rising {@code x}; one point makes a level line. */
    public MonotoneCubic(double[] x, double[] y) {
        if (!(x.length == y.length && x.length > 0)) {
            throw new IllegalArgumentException("a curve needs one point or more, got " + x.length + " and " + y.length);
        }
        this.x = x.clone();
        this.y = y.clone();
        slope = slopes();
    }

    private double[] slopes() {
        int n = x.length;
        double[] out = new double[n];
        if (n == 1) {
            return out;
        }
        for (int k = 1; k < n - 1; k++) {
            double left = secant(k - 1);
            double right = secant(k);
            if (left * right > 0) {
                double narrow = x[k] - x[k - 1];
                double wide = x[k + 1] - x[k];
                double share = (narrow + 2 * wide) / (3 * (narrow + wide));
                out[k] = left * right / (share * right + (1 - share) * left);
            }
        }
        out[0] = endSlope(secant(0), out[1], n);
        out[n - 1] = endSlope(secant(n - 2), out[n - 2], n);
        return out;
    }

    /** A parabola through the end, kept within what leaves the piece monotone. */
    private static double endSlope(double secant, double inner, int points) {
        if (points == 2) {
            return secant;
        }
        double slope = 1.5 * secant - 0.5 * inner;
        if (slope * secant <= 0) {
            return 0;
        }
        return Math.abs(slope) > 3 * Math.abs(secant) ? 3 * secant : slope;
    }

    private double secant(int k) {
        return (y[k + 1] - y[k]) / (x[k + 1] - x[k]);
    }

    /** Its value at {@code place}. */
    public double at(double place) {
        int n = x.length;
        if (!(place > x[0])) {
            return y[0];
        }
        if (place >= x[n - 1]) {
            return y[n - 1];
        }
        int found = Arrays.binarySearch(x, place);
        int k = found >= 0 ? found : -found - 2;
        double h = x[k + 1] - x[k];
        double t = (place - x[k]) / h;
        double s = 1 - t;
        return s * s * (1 + 2 * t) * y[k]
                + t * t * (3 - 2 * t) * y[k + 1]
                + t * s * h * (s * slope[k] - t * slope[k + 1]);
    }

    /** Its slope at {@code place}; 0 beyond its ends. */
    public double slopeAt(double place) {
        int n = x.length;
        if (!(place > x[0]) || place >= x[n - 1]) {
            return 0;
        }
        int found = Arrays.binarySearch(x, place);
        int k = found >= 0 ? found : -found - 2;
        double t = (place - x[k]) / (x[k + 1] - x[k]);
        double s = 1 - t;
        return 6 * s * t * secant(k) + s * (1 - 3 * t) * slope[k] + t * (3 * t - 2) * slope[k + 1];
    }
}
