package simmerpoint.tracing;

import simmerpoint.dish.mirror.Mirror;

/**
 * Random errors of a mirror as one Gaussian tilt of its normal. A tilt turns the reflected ray by twice itself in the
 * plane of incidence and by 2·cos i across it, so an error of the ray itself (beam spread) of standard deviation
 * b counts as a tilt of b/2 in the plane and b/(2 cos i) across: σ_in² = σ² + b²/4, σ_across² = σ² + b²/(4cos²i), to
 * first order in b (derived here from the law of reflection). The slope error σ itself is exact to all orders.
 *
 * @param slopeVariance σ², rad²
 * @param sharpVariance beam spread², rad², for the sharp part
 * @param wideVariance wide spread², rad², for the wide part
 * @param wideShare share of rays that take the wide part
 */
record MirrorErrorModel(double slopeVariance, double sharpVariance, double wideVariance, double wideShare) {
    static MirrorErrorModel of(Mirror mirror) {
        return new MirrorErrorModel(
                square(mirror.slopeErrorRadians()),
                square(mirror.beamSpreadRadians()),
                square(mirror.wideSpreadRadians()),
                mirror.wideShare());
    }

    private static double square(double x) {
        return x * x;
    }

    /** Largest standard deviation of the tilt in the plane of incidence, rad. */
    double largestStandardDeviation() {
        double wide = wideShare > 0 ? wideVariance : 0;
        return Math.sqrt(slopeVariance + Math.max(wideShare < 1 ? sharpVariance : 0, wide) / 4);
    }

    /** Whether any ray has an error of its own beside the slope error. */
    boolean spreads() {
        return (wideShare < 1 && sharpVariance > 0) || (wideShare > 0 && wideVariance > 0);
    }

    /** Whether no ray has any random error. */
    boolean isZero() {
        return largestStandardDeviation() == 0;
    }
}
