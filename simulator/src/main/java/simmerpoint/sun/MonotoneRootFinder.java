package simmerpoint.sun;

import java.util.function.DoubleUnaryOperator;

/** Roots of non-decreasing functions by Newton's method, with bisection where a step leaves the bracket. */
final class MonotoneRootFinder {
    private static final int MOST_STEPS = 200;

    /** Relative step at which Newton's next error, its square, is below rounding. */
    private static final double LAST_STEP = 1e-8;

    private MonotoneRootFinder() {}

    /**
     * The x between {@code low} and {@code high} where {@code f} is {@code target}, to about 1e-14 of the target or the
     * last digit of x.
     *
     * @param f non-decreasing between low and high, at most target at low and at least target at high
     * @param slope its derivative; may be 0 or infinite in places
     * @param start first guess
     */
    static double find(
            DoubleUnaryOperator f, DoubleUnaryOperator slope, double target, double low, double high, double start) {
        double width = high - low;
        double x = start >= low && start <= high ? start : 0.5 * (low + high);
        for (int i = 0; i < MOST_STEPS; i++) {
            double miss = f.applyAsDouble(x) - target;
            if (Math.abs(miss) <= 1e-14 * Math.abs(target)) {
                return x;
            }
            if (miss > 0) {
                high = x;
            } else {
                low = x;
            }
            double next = x - miss / slope.applyAsDouble(x);
            if (!(next > low && next < high)) {
                next = 0.5 * (low + high);
                if (next <= low || next >= high) {
                    return x;
                }
                x = next;
                continue;
            }
            if (Math.abs(next - x) <= LAST_STEP * Math.min(x, width) || next == x) {
                return next;
            }
            x = next;
        }
        return x;
    }
}
