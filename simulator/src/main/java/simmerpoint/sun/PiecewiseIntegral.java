package simmerpoint.sun;

import java.util.Arrays;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Cumulative integral of a non-negative function that is smooth within each of several adjacent cells, and its inverse.
 * Four Gauss-Legendre points in each cell, so exact for polynomials of degree seven; the owner chooses the cells narrow
 * enough.
 */
final class PiecewiseIntegral {
    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(4);
    private static final double[] POINTS = new double[RULE.getNumberOfPoints()];
    private static final double[] WEIGHTS = new double[RULE.getNumberOfPoints()];

    static {
        for (int i = 0; i < POINTS.length; i++) {
            POINTS[i] = RULE.getPoint(i);
            WEIGHTS[i] = RULE.getWeight(i);
        }
    }

    /** The function, which may differ from cell to cell. */
    @FunctionalInterface
    interface Piece {
        /** Value at {@code x} in cell {@code cell}. */
        double at(int cell, double x);
    }

    private final double[] borders;
    private final double[] sums;
    private final Piece piece;

    /**
     * Integrates all cells.
     *
     * @param borders ascending; cell i lies between borders i and i + 1. Kept, not copied
     */
    PiecewiseIntegral(double[] borders, Piece piece) {
        this.borders = borders;
        this.piece = piece;
        this.sums = new double[borders.length];
        for (int i = 0; i + 1 < borders.length; i++) {
            sums[i + 1] = sums[i] + within(i, borders[i + 1]);
        }
    }

    /** Integral over all cells. */
    double total() {
        return sums[sums.length - 1];
    }

    /** Index of the cell that contains {@code x}, which lies between the first and the last border. */
    int cell(double x) {
        int found = Arrays.binarySearch(borders, x);
        return Math.min(found >= 0 ? found : -found - 2, borders.length - 2);
    }

    /** Integral from the first border to {@code x}. */
    double upTo(double x) {
        int cell = cell(x);
        return sums[cell] + within(cell, x);
    }

    /** The x up to which the integral is {@code sum}, between 0 and {@link #total()}. */
    double inverse(double sum) {
        int found = Arrays.binarySearch(sums, sum);
        if (found >= 0) {
            return borders[found];
        }
        int cell = -found - 2;
        double low = borders[cell];
        double high = borders[cell + 1];
        double share = (sum - sums[cell]) / (sums[cell + 1] - sums[cell]);
        double start = Math.sqrt(low * low + share * (high * high - low * low));
        return MonotoneRootFinder.find(
                x -> sums[cell] + within(cell, x), x -> piece.at(cell, x), sum, low, high, start);
    }

    private double within(int cell, double x) {
        double half = 0.5 * (x - borders[cell]);
        double middle = borders[cell] + half;
        double sum = 0;
        for (int i = 0; i < POINTS.length; i++) {
            sum += WEIGHTS[i] * piece.at(cell, middle + half * POINTS[i]);
        }
        return half * sum;
    }
}
