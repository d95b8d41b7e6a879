package simmerpoint.sampling;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Where a function crosses 0, by Brent's method (R. P. Brent, Algorithms for Minimization without Derivatives, 1973).
 *
 * @param relative accuracy of the place as a share of it
 * @param absolute accuracy of the place
 * @param value a value so near to 0 is taken for 0
 * @param steps most evaluations
 */
public record RootFinder(double relative, double absolute, double value, int steps) {
    private static final double ROUNDING = 1e-14;
    private static final double ZERO = 1e-15;

    /** As good as {@code absolute}. */
    public static RootFinder to(double absolute, int steps) {
        return new RootFinder(ROUNDING, absolute, ZERO, steps);
    }

    /** As good as {@code accuracy}, and as that share of the place. */
    public static RootFinder toShare(double accuracy, int steps) {
        return new RootFinder(accuracy, accuracy, ZERO, steps);
    }

    /**
     * The place between two others at which {@code function} is 0; it must not have one sign at both.
     *
     * @throws org.apache.commons.math3.exception.NoBracketingException if it has
     */
    public double find(DoubleUnaryOperator function, double low, double high) {
        return new BrentSolver(relative, absolute, value).solve(steps, new Crossing(function), low, high);
    }

    /** A class of its own: the library's interface is too old for a lambda to be kept in an archive of classes. */
    private record Crossing(DoubleUnaryOperator function) implements UnivariateFunction {
        @Override
        public double value(double x) {
            return function.applyAsDouble(x);
        }
    }
}
