package simmerpoint.truth;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Points and weights of a one-dimensional rule.
 *
 * @param at the points
 * @param weight their weights
 */
record Rule(double[] at, double[] weight) {
    /** Gauss–Legendre of {@code order} points on each of {@code pieces} equal pieces of from..to. */
    static Rule gauss(double from, double to, int pieces, int order) {
        GaussIntegrator unit = new GaussIntegratorFactory().legendre(order);
        double[] at = new double[pieces * order];
        double[] weight = new double[pieces * order];
        double half = (to - from) / pieces / 2;
        for (int k = 0; k < at.length; k++) {
            double middle = from + (2 * (k / order) + 1) * half;
            at[k] = middle + half * unit.getPoint(k % order);
            weight[k] = half * unit.getWeight(k % order);
        }
        return new Rule(at, weight);
    }

    int size() {
        return at.length;
    }
}
