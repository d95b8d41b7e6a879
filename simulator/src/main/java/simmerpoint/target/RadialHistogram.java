package simmerpoint.target;

import java.util.OptionalDouble;

/**
 * Light that crosses the target's plane by distance from the target's centre: 400 bins per target radius up to four radii,
 * then bins that grow by 1 % each up to about 400 radii.
 */
final class RadialHistogram {
    private static final int PER_RADIUS = 400;
    private static final int NEAR = 4 * PER_RADIUS;
    private static final int FAR = 463;
    private static final double LOG_STEP = Math.log(1.01);

    private final double binsPerMetre;
    final double[] bins = new double[NEAR + FAR];

    RadialHistogram(double targetRadius) {
        binsPerMetre = PER_RADIUS / targetRadius;
    }

    /** Adds {@code amount} at distance {@code radius}; beyond the last bin it is not kept. */
    void add(double radius, double amount) {
        double x = radius * binsPerMetre;
        if (x < NEAR) {
            bins[(int) x] += amount;
        } else {
            double k = Math.log(x / NEAR) / LOG_STEP;
            if (k < FAR) {
                bins[NEAR + (int) k] += amount;
            }
        }
    }

    /** Adds {@code share} of {@code n} amounts. */
    void add(float[] radius, float[] amount, double share, int n) {
        float perRadius = (float) binsPerMetre;
        for (int i = 0; i < n; i++) {
            float x = radius[i] * perRadius;
            if (x < NEAR) {
                bins[(int) x] += amount[i] * share;
            } else {
                add(radius[i], amount[i] * share);
            }
        }
    }

    private double lowerEdge(int bin) {
        double x = bin <= NEAR ? bin : NEAR * Math.exp((bin - NEAR) * LOG_STEP);
        return x / binsPerMetre;
    }

    /** Radius that contains {@code amount}, linear within a bin; empty if less than that crosses the plane. */
    OptionalDouble radiusContaining(double amount) {
        double sum = 0;
        for (int k = 0; k < bins.length; k++) {
            if (bins[k] > 0 && sum + bins[k] >= amount) {
                double share = (amount - sum) / bins[k];
                return OptionalDouble.of(lowerEdge(k) + share * (lowerEdge(k + 1) - lowerEdge(k)));
            }
            sum += bins[k];
        }
        return OptionalDouble.empty();
    }

    /** A new histogram: this plus {@code factor} times another. */
    RadialHistogram plus(RadialHistogram other, double factor) {
        RadialHistogram out = new RadialHistogram(PER_RADIUS / binsPerMetre);
        out.add(this, 1);
        out.add(other, factor);
        return out;
    }

    /** Adds {@code factor} times another histogram. */
    void add(RadialHistogram other, double factor) {
        for (int k = 0; k < bins.length; k++) {
            bins[k] += factor * other.bins[k];
        }
    }
}
