package simmerpoint.truth;

import static org.junit.jupiter.api.Assertions.assertTrue;

import simmerpoint.sampling.Estimate;

/**
 * Bounds in standard errors. With an honest normal error a figure misses by over 4 standard errors once in 16,000; as
 * the standard error is itself estimated from a few replicates the tails are fatter, so the literal seeds of the tests
 * decide, and the allowance for the source's own error is stated in each test.
 */
final class Check {
    private Check() {}

    /** {@code got} is {@code wanted} within 4 of its standard errors plus {@code allowance} (same unit). */
    static void near(String what, double wanted, Estimate got, double allowance) {
        near(what, wanted, got.value(), got.standardError(), allowance);
    }

    /** {@code got} ± {@code error} is {@code wanted} within 4 errors plus {@code allowance}. */
    static void near(String what, double wanted, double got, double error, double allowance) {
        double allowed = 4 * error + allowance;
        assertTrue(
                Math.abs(got - wanted) <= allowed,
                () -> String.format(
                        "%s: wanted %.8g, got %.8g ± %.2g, off by %.3g, allowed %.3g (4 SE + %.2g)",
                        what, wanted, got, error, got - wanted, allowed, allowance));
    }

    /**
     * Two independent estimates of one figure agree within 5 standard errors of their difference. Each error comes from 16
     * replicates, so the difference follows Student's law of 15 to 30 degrees of freedom: 5 errors are passed by chance
     * once in 6,000 to 40,000 times (4 errors once in 900 to 2,600: too often for the hundreds of comparisons made here).
     */
    static void same(String what, Estimate a, Estimate b, double allowance) {
        double error = Math.hypot(a.standardError(), b.standardError());
        near(what, a.value(), b.value(), error, error + allowance);
    }

    /** {@code small} lies below {@code large} by more than 4 standard errors of their difference. */
    static void below(String what, Estimate small, Estimate large) {
        double error = Math.hypot(small.standardError(), large.standardError());
        assertTrue(
                small.value() + 4 * error < large.value(),
                () -> String.format("%s: %s should lie below %s by over 4 SE (%.2g)", what, small, large, 4 * error));
    }

    /** {@code a} does not exceed {@code b} by more than 4 standard errors of their difference plus an allowance. */
    static void notAbove(String what, Estimate a, Estimate b, double allowance) {
        double error = Math.hypot(a.standardError(), b.standardError());
        assertTrue(
                a.value() <= b.value() + 4 * error + allowance,
                () -> String.format("%s: %s should not exceed %s by over 4 SE (%.2g)", what, a, b, 4 * error));
    }
}
