package simmerpoint.target;

import java.util.OptionalDouble;

/**
 * Light that crosses the target's plane, summed by distance from the target's middle: 400 bins per target radius out to
 * four radii, then bins that each grow by 1 % out to about 400 radii.
 */
final class RadialHistogram {
    private static final int PER_RADIUS = 400;
    private static final int NEAR = 4 * PER_RADIUS;
    private static final int FAR = 463;
    private static final double LOG_STEP = Math.log(1.01);

    private final double perMetre;
    final double[] sums = new double[NEAR + FAR];

    RadialHistogram(double targetRadius) {
        perMetre = PER_RADIUS / targetRadius;
    }

    /** Adds {@code amount} at distance {@code radius}; beyond the last bin it is not kept. */
    void add(double radius, double amount) {
        double x = radius * perMetre;
        if (x < NEAR) {
            sums[(int) x] += amount;
        } else {
            double k = Math.log(x / NEAR) / LOG_STEP;
            if (k < FAR) {
                sums[NEAR + (int) k] += amount;
            }
        }
    }

    /** The same for {@code share} of {@code n} amounts at a stroke. */
    void add(float[] radius, float[] amount, double share, int n) {
        float perRadius = (float) perMetre;
        for (int i = 0; i < n; i++) {
            float x = radius[i] * perRadius;
            if (x < NEAR) {
                sums[(int) x] += amount[i] * share;
            } else {
                add(radius[i], amount[i] * share);
            }
        }
    }

    private double border(int bin) {
        double x = bin <= NEAR ? bin : NEAR * Math.exp((bin - NEAR) * LOG_STEP);
        return x / perMetre;
    }

    /** Radius within which {@code amount} lies, if so much crosses the plane at all; straight line within a bin. */
    OptionalDouble radiusHolding(double amount) {
        double sum = 0;
        for (int k = 0; k < sums.length; k++) {
            if (sums[k] > 0 && sum + sums[k] >= amount) {
                double share = (amount - sum) / sums[k];
                return OptionalDouble.of(border(k) + share * (border(k + 1) - border(k)));
            }
            sum += sums[k];
        }
        return OptionalDouble.empty();
    }

    /** Fresh sums: these and {@code factor} times another's. */
    RadialHistogram plus(RadialHistogram other, double factor) {
        RadialHistogram out = new RadialHistogram(PER_RADIUS / perMetre);
        out.add(this, 1);
        out.add(other, factor);
        return out;
    }

    /** Adds {@code factor} times another's sums. */
    void add(RadialHistogram other, double factor) {
        for (int k = 0; k < sums.length; k++) {
            sums[k] += factor * other.sums[k];
        }
    }
}
