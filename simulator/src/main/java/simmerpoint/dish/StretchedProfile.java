package simmerpoint.dish;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * A curve drawn out sideways.
 *
 * @param original the curve
 * @param factor by how much
 */
record StretchedProfile(Profile original, double factor) implements Profile {
    private static final int POINTS = 40;

    @Override
    public double height(double r) {
        return original.height(r / factor);
    }

    @Override
    public double slope(double r) {
        return original.slope(r / factor) / factor;
    }

    @Override
    public double arcLength(double r) {
        if (!(r > 0)) {
            return 0;
        }
        GaussIntegrator gauss = new GaussIntegratorFactory().legendre(POINTS, 0, r);
        return gauss.integrate(x -> Math.hypot(1, slope(x)));
    }

    @Override
    public double radiusAtHeight(double height) {
        return factor * original.radiusAtHeight(height);
    }
}
