package simmerpoint.sun;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/** Root mean square angles of sun shapes given by a smooth function. */
final class RmsAngle {
    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(48, 0, 1);

    private RmsAngle() {}

    /**
     * √(mean θ² / 2) for a radiance that is smooth in μ = √(1 − (sin θ / edge)²): with q = edge²(1 − μ²) and
     * dq ∝ μ dμ, 48 Gauss-Legendre points over μ.
     *
     * @param edge sine of the largest angle
     * @param radianceOfMu radiance as a function of μ, 1 at the centre and 0 at the edge
     */
    static double sigmaPerAxis(double edge, DoubleUnaryOperator radianceOfMu) {
        double light = RULE.integrate(mu -> mu * radianceOfMu.applyAsDouble(mu));
        double turning = RULE.integrate(mu -> {
            double angle = Math.asin(edge * Math.sqrt((1 - mu) * (1 + mu)));
            return angle * angle * mu * radianceOfMu.applyAsDouble(mu);
        });
        return Math.sqrt(0.5 * turning / light);
    }
}
