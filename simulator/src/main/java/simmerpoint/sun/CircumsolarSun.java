package simmerpoint.sun;

import java.util.Objects;

/**
 * The sun's disc with the circumsolar ring due to haze and thin cloud. D. Buie, A. G. Monger and C. J. Dey, Sunshape
 * distributions for terrestrial solar simulations, Solar Energy 74 (2003) 113-122; the coefficients are from memory, not
 * read again. With t the angle in mrad and χ the circumsolar ratio, radiance over the centre's is
 *
 * <pre>
 * t up to 4.65:        cos(0.326 t) / cos(0.308 t)
 * t from 4.65 to 43.6: exp(κ) t^γ,  κ = 0.9 ln(13.5 χ) χ^−0.3,  γ = 2.2 ln(0.52 χ) χ^0.43 − 0.1
 * </pre>
 *
 * <p><b>The resulting ratio differs from χ</b>: integrating these formulas, 0.02 gives 0.006, 0.05 gives 0.043, 0.1 gives
 * 0.100, 0.2 gives 0.187, 0.3 gives 0.274 and 0.4 gives 0.373. {@link #resultingRatio()} is the result for any χ; {@link
 * #describe()} shows both. Ratios above 0.4 are outside the measured skies.
 *
 * <p>Each part is integrated by the package's convention: the disc by Gauss points in narrow cells, the ring by the
 * first four terms of the series of sin θ cos θ, the next below 1e-14 of the first.
 */
public final class CircumsolarSun implements SunShape {
    /** Edge of the disc in this model, rad. */
    public static final double DISC_RADIANS = 4.65e-3;

    /** Edge of the ring in this model, rad. */
    public static final double RING_RADIANS = 43.6e-3;

    /** Least ratio χ. */
    public static final double LEAST_RATIO = 0.01;

    /** Greatest ratio χ. */
    public static final double GREATEST_RATIO = 0.6;

    private static final int CELLS = 128;
    private static final int RING_TERMS = 4;

    private final double ratio;
    private final double gamma;
    private final double edgeRadiance;
    private final PiecewiseIntegral disc;
    private final double ringLight;
    private final double light;

    /**
     * The model for one sky.
     *
     * @param ratio χ, nominal share of the light in the ring, {@value #LEAST_RATIO} to {@value #GREATEST_RATIO}
     */
    public CircumsolarSun(double ratio) {
        if (!(ratio >= LEAST_RATIO && ratio <= GREATEST_RATIO)) {
            throw new IllegalArgumentException(
                    "circumsolar ratio " + ratio + " is outside " + LEAST_RATIO + " to " + GREATEST_RATIO);
        }
        this.ratio = ratio;
        double kappa = 0.9 * Math.log(13.5 * ratio) * Math.pow(ratio, -0.3);
        this.gamma = 2.2 * Math.log(0.52 * ratio) * Math.pow(ratio, 0.43) - 0.1;
        this.edgeRadiance = Math.exp(kappa) * Math.pow(1e3 * DISC_RADIANS, gamma);
        this.disc = overDisc();
        this.ringLight = ringUpTo(RING_RADIANS / DISC_RADIANS, gamma + 2);
        this.light = disc.total() + ringLight;
    }

    /** The share of the light in the ring that results from the formulas. */
    public double resultingRatio() {
        return ringLight / light;
    }

    @Override
    public String describe() {
        return "circumsolar, ratio " + SunShapeChecks.fourDigits(ratio) + " asked for, "
                + SunShapeChecks.fourDigits(resultingRatio()) + " resulting";
    }

    @Override
    public double relativeRadiance(double angle) {
        if (!(angle >= 0 && angle <= RING_RADIANS)) {
            return 0;
        }
        return angle <= DISC_RADIANS ? discRadiance(angle) : edgeRadiance * Math.pow(angle / DISC_RADIANS, gamma);
    }

    @Override
    public double density(double angle) {
        return relativeRadiance(angle) * AngularWeight.at(angle) / light;
    }

    @Override
    public double cumulative(double angle) {
        if (angle <= DISC_RADIANS) {
            return disc.upTo(Math.max(0, angle)) / light;
        }
        return angle >= RING_RADIANS ? 1 : (disc.total() + ringUpTo(angle / DISC_RADIANS, gamma + 2)) / light;
    }

    @Override
    public double inverse(double u) {
        double sum = SunShapeChecks.share(u) * light;
        if (sum <= disc.total()) {
            return disc.inverse(sum);
        }
        return u == 1 ? RING_RADIANS : ringInverse(sum - disc.total());
    }

    @Override
    public double largestAngle() {
        return RING_RADIANS;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CircumsolarSun sun && sun.ratio == ratio;
    }

    @Override
    public int hashCode() {
        return Objects.hash(CircumsolarSun.class, ratio);
    }

    private static double discRadiance(double angle) {
        double t = 1e3 * angle;
        return Math.cos(0.326 * t) / Math.cos(0.308 * t);
    }

    /** Integral of radiance · sin θ cos θ over the disc. */
    private static PiecewiseIntegral overDisc() {
        double[] borders = new double[CELLS + 1];
        for (int i = 1; i < CELLS; i++) {
            borders[i] = DISC_RADIANS * i / CELLS;
        }
        borders[CELLS] = DISC_RADIANS;
        return new PiecewiseIntegral(borders, (cell, x) -> discRadiance(x) * AngularWeight.at(x));
    }

    /**
     * Integral over the ring from the disc's edge to {@code x} edges: term k of the series gives edge radiance ·
     * edge^(2 + 2k) · ∫ y^(power − 1 + 2k) dy from 1 to x.
     */
    private double ringUpTo(double x, double power) {
        double sum = 0;
        double logX = Math.log(x);
        double scale = edgeRadiance * DISC_RADIANS * DISC_RADIANS;
        for (int k = 0; k < RING_TERMS; k++) {
            double n = power + 2 * k;
            sum += AngularWeight.SERIES[k] * scale * (n == 0 ? logX : Math.expm1(n * logX) / n);
            scale *= DISC_RADIANS * DISC_RADIANS;
        }
        return sum;
    }

    private double ringInverse(double sum) {
        double n = gamma + 2;
        double y = sum / (edgeRadiance * DISC_RADIANS * DISC_RADIANS);
        double start = Math.exp(n == 0 ? y : Math.log1p(n * y) / n);
        double end = RING_RADIANS / DISC_RADIANS;
        double x = MonotoneRootFinder.find(
                z -> ringUpTo(z, n), z -> light * DISC_RADIANS * density(z * DISC_RADIANS), sum, 1, end, start);
        return x * DISC_RADIANS;
    }
}
