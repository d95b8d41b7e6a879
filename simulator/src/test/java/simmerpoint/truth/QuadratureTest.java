package simmerpoint.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.geometry.Vec;

/** The quadratures against closed forms and against themselves, before the tracer is held against them. */
class QuadratureTest {
    private static final double SUN = Scene.SUN;

    private static Bench square(double focal, double pullBack) {
        Scene scene = Scene.of(Scene.smooth(1, focal, 0), Scene.disc(1)).pullBack(pullBack);
        return Bench.of(scene, 0);
    }

    private static double focalOfRim(double diameter, double rimDegrees) {
        return diameter / (4 * Math.tan(Math.toRadians(rimDegrees) / 2));
    }

    @Test
    void overlapOfSquareAndDisc() {
        double[] x = {0, 2, 2, 0};
        double[] y = {0, 0, 2, 2};
        assertEquals(Math.PI / 4, DiscOverlap.areaWithin(x, y, 1), 1e-15);
        assertEquals(4, DiscOverlap.areaWithin(x, y, 3), 1e-14);
        double segment = 1 - Math.PI / 4; // a square of half-side 1 outside a disc of radius 1: four corners
        double[] cx = {-1, 1, 1, -1};
        double[] cy = {-1, -1, 1, 1};
        assertEquals(4 - 4 * segment, DiscOverlap.areaWithin(cx, cy, 1), 1e-14);
        double r = 1.2; // four circular segments of half-angle acos(1/r) stick out
        double half = Math.acos(1 / r);
        double out = 4 * r * r * (half - Math.sin(half) * Math.cos(half));
        assertEquals(Math.PI * r * r - out, DiscOverlap.areaWithin(cx, cy, r), 1e-14);
        assertEquals(0.5, DiscOverlap.shareWithin(-2, 0, 2, 0, 1), 1e-15);
        assertEquals(0, DiscOverlap.shareWithin(-2, 1.5, 2, 1.5, 1), 0);
        assertEquals(0.25, DiscOverlap.shareWithin(0, 0, 4, 0, 1), 1e-15);
    }

    /** Peak sin²rim/sin²θ. Derived (brightness theorem); stated in Rabl, Active Solar Collectors, 1985, from memory. */
    @ParameterizedTest
    @CsvSource({"30, 11562.1", "45, 23124.2", "60, 34686.3", "75, 43150.4"})
    void smoothDishHasThePeakOfTheBrightnessTheorem(double rim, double peak) {
        double focal = focalOfRim(1.2, rim);
        double r = 0.5 * focal * SUN;
        Within light = new SmoothQuadrature(1.2, focal, 0).integrate(square(focal, 0), SUN, 40, 1, 24, r);
        assertEquals(Math.PI * 0.36, light.reflected(), 1e-9);
        assertEquals(peak, light.within()[0] / (Math.PI * r * r), 1e-5 * peak);
    }

    /** Encircled power at x = r/(f·θ). Derived for small angles; a separate script met 0.540657 at x = 1. */
    @ParameterizedTest
    @CsvSource({
        "30, 1.0, 0.87051", "45, 1.0, 0.72855", "45, 1.1, 0.84879", "45, 1.2, 0.92168", "45, 1.3, 0.96213",
        "45, 1.5, 0.99587", "60, 1.0, 0.56250", "60, 1.2, 0.74426", "60, 1.5, 0.88749", "60, 2.0, 0.97830",
        "60, 2.5, 0.99943", "61.9275, 1.0, 0.540657"
    })
    void smoothDishHasTheKnownEncircledPower(double rim, double x, double share) {
        double focal = focalOfRim(1.2, rim);
        Within light = new SmoothQuadrature(1.2, focal, 0).integrate(square(focal, 0), SUN, 60, 1, 48, x * focal * SUN);
        assertEquals(share, light.share(0), 3e-4);
    }

    /** Everything within ρ·sin θ/cos(rim + θ) = 6.77840 mm, 2.0e-4 beyond 0.95 of it (derived; separate script). */
    @Test
    void smoothDishLightsNothingBeyondItsLargestImage() {
        double rf = 6.77840e-3;
        Within light =
                new SmoothQuadrature(1.2, 0.5, 0).integrate(square(0.5, 0), SUN, 100, 1, 96, rf + 1e-8, 0.95 * rf);
        assertEquals(1, light.share(0), 1e-9);
        assertEquals(2.0e-4, 1 - light.share(1), 0.5e-4);
    }

    /** Share within R where a strip's parallel light makes a line: 1 − (1 − R/W)². Derived here. */
    @ParameterizedTest
    @CsvSource({
        "6, 0.375000, 0.090, 0.510000",
        "8, 0.426777, 0.090, 0.630298",
        "12, 0.466506, 0.090, 0.823226",
        "16, 0.480970, 0.050, 0.671846",
        "24, 0.491481, 0.050, 0.869275",
        "24, 0.491481, 0.090, 1.000000"
    })
    void stripsShareOfTheBrightLine(int sectors, double focalOfStrip, double radius, double share) {
        double beta = Math.PI / sectors;
        double exact = 0.5 * Math.cos(beta) * Math.cos(beta);
        assertEquals(focalOfStrip, exact, 1e-6);
        Within light =
                new StripQuadrature(1.2, 0.5, 0, sectors).integrate(square(0.5, exact - 0.5), 1e-9, 1, 2000, radius);
        assertEquals(share, light.share(0), 2e-6);
        assertEquals(sectors * 0.36 * Math.sin(2 * beta) / 2, light.reflected(), 1e-9);
    }

    /** A flat tile's image under parallel light is w·cos(ψ/2)/cos ψ by w. Derived here. */
    @Test
    void flatTileImageHasItsSize() {
        FlatPanelQuadrature tile = new FlatPanelQuadrature(List.of(new Vec[][] {Tile.tangent(0.5, 45, 0.1)}));
        double halfRadial = 0.130656 / 2;
        double halfAcross = 0.05;
        double reach = Math.hypot(halfRadial, halfAcross);
        Within light = tile.integrate(square(0.5, 0), 1e-9, 1, reach + 1e-6, halfAcross);
        assertEquals(1, light.share(0), 1e-12);
        assertEquals(Math.PI * halfAcross * halfAcross / (0.130656 * 0.1), light.share(1), 1e-5);
    }

    @Test
    void finerRulesChangeNothing() {
        Scene scene =
                Scene.of(Scene.rings(1.2, 0.8, 0.06, 24, 6), Scene.disc(0.06)).drift(0.02, 0.01);
        Bench bench = Bench.of(scene, 0.3);
        double[] radii = {0.02, 0.04, 0.06};
        FlatPanelQuadrature rings = FlatPanelQuadrature.rings(1.2, 0.8, 0.06, 24, 6);
        agree(rings.integrate(bench, SUN, 8, radii), rings.integrate(bench, SUN, 20, radii));
        StripQuadrature strips = new StripQuadrature(1.2, 0.8, 0.06, 24);
        agree(strips.integrate(bench, SUN, 8, 20, radii), strips.integrate(bench, SUN, 12, 40, radii));
        SmoothQuadrature smooth = new SmoothQuadrature(1.2, 0.8, 0.06);
        agree(smooth.integrate(bench, SUN, 12, 96, 32, radii), smooth.integrate(bench, SUN, 20, 160, 48, radii));
    }

    private static void agree(Within coarse, Within fine) {
        assertEquals(fine.reflected(), coarse.reflected(), 1e-6 * fine.reflected());
        for (int k = 0; k < fine.within().length; k++) {
            assertEquals(fine.share(k), coarse.share(k), 1e-5, "radius " + k);
        }
    }

    /** Many small flat panels come as near to the uncut dish as their size allows. */
    @Test
    void manyFlatPanelsApproachTheSmoothDish() {
        Bench bench = square(0.8, 0.05);
        double[] radii = {0.01, 0.03};
        Within smooth = new SmoothQuadrature(1.2, 0.8, 0.06).integrate(bench, SUN, 40, 1, 48, radii);
        Within flat = FlatPanelQuadrature.rings(1.2, 0.8, 0.06, 360, 120).integrate(bench, SUN, 3, radii);
        assertEquals(smooth.reflected(), flat.reflected(), 1e-4 * smooth.reflected());
        assertEquals(smooth.share(0), flat.share(0), 3e-3);
        assertEquals(smooth.share(1), flat.share(1), 3e-3);
        assertTrue(smooth.share(0) > 0.01 && smooth.share(1) < 0.99);
    }
}
