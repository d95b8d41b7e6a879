package simmerpoint.truth;

import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.special.Erf;

/**
 * Share of a round Gaussian spot (standard deviation s per axis) that falls into a disc of radius R whose middle lies a
 * beside its own: the Rice law's distribution function, or the noncentral chi-square's of two degrees of freedom. Computed
 * as ∫ φ(x − a)·erf(√(R² − x²)/√2) dx from −R to R, lengths in s, with x = R·sin t; no tracing code.
 */
final class RiceLaw {
    private RiceLaw() {}

    /** The share for a and R in units of s. */
    static double share(double a, double radius) {
        return new IterativeLegendreGaussIntegrator(16, 1e-12, 1e-13)
                .integrate(100_000, t -> at(a, radius, t), -Math.PI / 2, Math.PI / 2);
    }

    private static double at(double a, double radius, double t) {
        double x = radius * Math.sin(t);
        double half = radius * Math.cos(t);
        double bell = Math.exp(-(x - a) * (x - a) / 2) / Math.sqrt(2 * Math.PI);
        return bell * Erf.erf(half / Math.sqrt(2)) * half;
    }

    /** The offset (in s) at which a share {@code loss} of what lands at offset 0 is lost. */
    static double offset(double radius, double loss) {
        double wanted = (1 - loss) * share(0, radius);
        return new BrentSolver(1e-10).solve(200, a -> share(a, radius) - wanted, 0, radius + 10);
    }
}
