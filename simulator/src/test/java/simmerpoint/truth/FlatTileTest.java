package simmerpoint.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.target.SpotEllipse;

/**
 * The image of one flat tile, 0.1 m square, that touches the paraboloid f = 0.5 m where the focus sees it 45° off the
 * axis: 0.130656 m by 0.100000 m in parallel light (derived; exact, since a flat mirror keeps a beam parallel).
 */
class FlatTileTest {
    private static final double RADIAL = 0.1 * Math.cos(Math.PI / 8) / Math.cos(Math.PI / 4);

    private static Scene tile(double radius) {
        return Scene.of(Scene.mesh(1.2, 0.5, Tile.mesh(Tile.tangent(0.5, 45, 0.1))), Scene.disc(radius));
    }

    @Test
    void imageInParallelLightHasTheTilesSize() {
        assertEquals(0.130656, RADIAL, 5e-7);
        double corner = Math.hypot(RADIAL / 2, 0.05);
        TraceResult all = tile(corner + 1e-6).with(Scene.POINT).trace(1L << 18, 41);
        assertEquals(0, all.ledger().missed().value(), 0);
        TraceResult most = tile(corner - 0.002).with(Scene.POINT).trace(1L << 18, 41);
        assertTrue(most.ledger().missed().value() > 0);
        SpotEllipse spot = all.spot().ellipse().orElseThrow();
        assertEquals(RADIAL / Math.sqrt(12), spot.longSigma(), 2e-3 * RADIAL / Math.sqrt(12));
        assertEquals(0.1 / Math.sqrt(12), spot.shortSigma(), 2e-3 * 0.1 / Math.sqrt(12));
        Check.near("centroid x", 0, all.spot().centroidX(), 1e-7);
        Check.near("centroid y", 0, all.spot().centroidY(), 1e-7);
    }

    /** A disc inside the image is evenly lit: share = its area over the image's. */
    @Test
    void imageIsEvenlyLit() {
        TraceResult result = tile(0.04).with(Scene.POINT).trace(1L << 18, 42);
        double share = Math.PI * 0.04 * 0.04 / (RADIAL * 0.1);
        Check.near("share", share, result.spot().interceptFactor(), 1e-6);
        double power = 1000 * result.apertureArea();
        assertEquals(0.1 * 0.1 * Math.cos(Math.PI / 8), result.apertureArea(), 1e-9);
        Check.near("reflected", power, result.ledger().reflected(), 2e-5 * power);
    }

    /** The sun adds half-axes ρ·θ/cos ψ and ρ·θ: variances of a uniform disc, θ/2 per axis, add (small angles, 1 %). */
    @Test
    void sunWidensTheImage() {
        SpotEllipse spot = tile(0.1).trace(1L << 18, 43).spot().ellipse().orElseThrow();
        double rho = 0.585786;
        double radial = Math.hypot(RADIAL / Math.sqrt(12), rho * Scene.SUN / Math.cos(Math.PI / 4) / 2);
        double across = Math.hypot(0.1 / Math.sqrt(12), rho * Scene.SUN / 2);
        assertEquals(radial, spot.longSigma(), 3e-3 * radial);
        assertEquals(across, spot.shortSigma(), 3e-3 * across);
    }

    /** No light lands beyond the tile's image widened by the sun: full widths 0.007704 and 0.005448 m more. */
    @Test
    void nothingLandsBeyondTheWidenedImage() {
        double reach = Math.hypot(RADIAL / 2 + 0.007704 / 2, 0.05 + 0.005448 / 2);
        assertEquals(0, tile(1.01 * reach).trace(1L << 18, 44).ledger().missed().value(), 0);
    }
}
