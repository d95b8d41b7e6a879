package simmerpoint.dish.shape;

/**
 * A rib on the parabola z = r²/4f, clamped at the axis, that bends and keeps its length. With ρ = r/R it turns by ω(ρ) = Σ c[k]·ρᵏ; its
 * points rise by ζ = ∫ω dr and go inwards by ∫ω·z' dr, so that above a place of the plan it rises by ζ + z'·inwards (first order in ω,
 * derived here).
 */
final class RibBending {
    private final double[] turn;
    private final double focal;
    private final double rim;

    /**
     * Of one rib.
     *
     * @param turn the coefficients c, rad
     * @param focalLength f, m
     * @param rim R, m
     */
    RibBending(double[] turn, double focalLength, double rim) {
        this.turn = turn.clone();
        focal = focalLength;
        this.rim = rim;
    }

    /** Height above the plan at a distance from the axis, m. */
    double height(double r) {
        return rim * sum(r / rim, 1) + r / (2 * focal) * inwards(r);
    }

    /** Slope of that height. */
    double slope(double r) {
        double steep = r / (2 * focal);
        return turn(r / rim) * (1 + steep * steep) + inwards(r) / (2 * focal);
    }

    /** How far the point at a distance from the axis has gone inwards, m. */
    double inwards(double r) {
        return rim * rim / (2 * focal) * sum(r / rim, 2);
    }

    private double turn(double rho) {
        double value = 0;
        for (int k = turn.length - 1; k >= 0; k--) {
            value = value * rho + turn[k];
        }
        return value;
    }

    /** Σ c[k]·ρ^(k + more)/(k + more). */
    private double sum(double rho, int more) {
        double value = 0;
        for (int k = turn.length - 1; k >= 0; k--) {
            value = value * rho + turn[k] / (k + more);
        }
        return value * (more == 1 ? rho : rho * rho);
    }
}
