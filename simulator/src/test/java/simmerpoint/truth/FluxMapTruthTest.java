package simmerpoint.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.FluxMap;

/** Flux maps of a perfect paraboloid, ring by ring. */
class FluxMapTruthTest {
    private static final double BEAM = 1000;

    /**
     * Mean flux of the cells whose middles lie between two radii against the mean of {@code wanted} at their middles.
     * Bound: 4 standard errors as if cells were independent, plus 1 % for cells that straddle the ring's borders and for
     * what cells of one replicate have in common.
     */
    private static void ring(FluxMap map, double from, double to, DoubleUnaryOperator wanted) {
        double got = 0;
        double want = 0;
        double variance = 0;
        int cells = 0;
        for (int j = 0; j < map.rows(); j++) {
            for (int i = 0; i < map.columns(); i++) {
                double r = Math.hypot(map.first(i), map.second(j));
                if (r >= from && r < to) {
                    got += map.at(i, j);
                    want += wanted.applyAsDouble(r);
                    variance += Math.pow(map.standardError()[j * map.columns() + i], 2);
                    cells++;
                }
            }
        }
        assertTrue(cells > 0, "no cells between " + from + " and " + to);
        double error = Math.sqrt(variance) / cells;
        Check.near("flux from " + from + " to " + to, want / cells, got / cells, error, 0.01 * want / cells);
    }

    /**
     * Parallel light on a plane ζ beyond or before the focus: C = (f/ζ)² cos³ψ/cos⁴(ψ/2) at ζ·tan ψ (derived). Encircled
     * power is the share of the aperture within 2f·tan(ψ/2).
     */
    @ParameterizedTest
    @CsvSource({
        "0.25, 30, 2.98454",
        "0.25, 45, 1.94113",
        "0.25, 60, 0.888889",
        "-0.25, 30, 2.98454",
        "-0.25, 45, 1.94113",
        "1.0, 30, 0.186533",
        "1.0, 45, 0.121320",
        "1.0, 60, 0.0555556"
    })
    void parallelLightOffTheFocalPlane(double zeta, double psiDegrees, double concentration) {
        double psi = Math.toRadians(psiDegrees);
        double r = Math.abs(zeta) * Math.tan(psi);
        Scene scene = Scene.of(Scene.smooth(1.2, 0.5, 0), Scene.disc(r))
                .with(Scene.POINT)
                .pullBack(zeta);
        TraceResult result = scene.trace(1L << 17, 21);
        double share = Math.pow(2 * 0.5 * Math.tan(psi / 2) / 0.6, 2);
        Check.near("encircled", share, result.spot().interceptFactor(), 2e-5);
        assertEquals(concentration, flux(zeta, r), 1e-5 * concentration);
        FluxMap map = result.maps().crossing();
        ring(map, 0, 0.2 * r, at -> BEAM * flux(zeta, at));
        ring(map, 0.3 * r, 0.5 * r, at -> BEAM * flux(zeta, at));
        ring(map, 0.6 * r, 0.9 * r, at -> BEAM * flux(zeta, at));
    }

    private static double flux(double zeta, double r) {
        double psi = Math.atan(r / Math.abs(zeta));
        return Math.pow(0.5 / zeta, 2) * Math.pow(Math.cos(psi), 3) / Math.pow(Math.cos(psi / 2), 4);
    }

    /** On the axis (f/ζ)² (derived). */
    @ParameterizedTest
    @CsvSource({"0.25, 4.00000", "-0.25, 4.00000", "1.0, 0.250000"})
    void parallelLightOnTheAxis(double zeta, double concentration) {
        double r = 0.02 * Math.abs(zeta); // flux falls by 1e-4 over it
        Scene scene = Scene.of(Scene.smooth(1.2, 0.5, 0), Scene.disc(r))
                .with(Scene.POINT)
                .pullBack(zeta);
        TraceResult result = scene.trace(1L << 18, 22);
        Check.near("on the axis", concentration, result.spot().meanConcentration(), 3e-4 * concentration);
    }

    /** The focal spot is flat up to f·θ, then falls as derived by one-dimensional quadrature for small angles. */
    @Test
    void focalSpotIsFlatAndThenFalls() {
        double rim = Math.PI / 4;
        double focal = 0.3 / Math.tan(rim / 2);
        double unit = focal * Scene.SUN;
        Scene scene = Scene.of(Scene.smooth(1.2, focal, 0), Scene.disc(1.7 * unit));
        TraceResult result = scene.trace(1L << 20, 23);
        FluxMap map = result.maps().crossing();
        double peak = BEAM * 23124.2;
        ring(map, 0, 0.4 * unit, r -> peak);
        ring(map, 0.4 * unit, 0.7 * unit, r -> peak);
        ring(map, 0.7 * unit, 0.95 * unit, r -> peak);
        assertEquals(0.596627, profile(rim, 1.1), 2e-4);
        assertEquals(0.302071, profile(rim, 1.2), 2e-4);
        assertEquals(0.159156, profile(rim, 1.3), 2e-4);
        assertEquals(0.031430, profile(rim, 1.5), 2e-4);
        ring(map, 1.25 * unit, 1.45 * unit, r -> peak * profile(rim, r / unit));
        assertEquals(result.ledger().reflected().value(), map.power(), 1e-6 * map.power());
    }

    /** Light at x = r/(f·θ) as a share of the peak: share of azimuths from which a mirror ring shows the sun there. */
    private static double profile(double rim, double x) {
        Rule rule = Rule.gauss(0, rim, 2000, 2);
        double sum = 0;
        for (int k = 0; k < rule.size(); k++) {
            double psi = rule.at()[k];
            double rho = 2 / (1 + Math.cos(psi));
            double cos2 = (1 - rho * rho / (x * x)) / Math.pow(Math.sin(psi), 2);
            double share = cos2 <= 0 ? 1 : cos2 >= 1 ? 0 : 2 / Math.PI * Math.acos(Math.sqrt(cos2));
            sum += rule.weight()[k] * Math.sin(psi) * Math.cos(psi) * share;
        }
        return 2 * sum / Math.pow(Math.sin(rim), 2);
    }
}
