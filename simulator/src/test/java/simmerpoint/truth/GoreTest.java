package simmerpoint.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.sun.UniformDiscSun;
import simmerpoint.target.Spot;

/** Strips bent along parabolic ribs: each is a parabolic cylinder of focal length f·cos²(π/n) (derived here). */
class GoreTest {
    private static Scene strips(int sectors, double radius) {
        return Scene.of(Scene.strips(1.2, 0.5, 0, sectors), Scene.disc(radius)).with(Scene.POINT);
    }

    private static double focalOfStrip(int sectors) {
        return 0.5 * Math.pow(Math.cos(Math.PI / sectors), 2);
    }

    /**
     * In the plane z = f·cos²β each strip's parallel light is a line of half length W = a·sin β, of which 1 − (1 − R/W)²
     * lies within R. Derived; a separate Monte Carlo met 0.63006 (n 8) and 0.82374 (n 12) at 90 mm.
     */
    @ParameterizedTest
    @CsvSource({
        "6, 0.375000, 0.300000, 0.510000, 0.305556, 0.826993",
        "8, 0.426777, 0.229610, 0.630298, 0.388101, 0.900316",
        "12, 0.466506, 0.155291, 0.823226, 0.540282, 0.954930",
        "16, 0.480970, 0.117054, 0.946581, 0.671846, 0.974495",
        "24, 0.491481, 0.078316, 1.000000, 0.869275, 0.988616",
        "32, 0.495196, 0.058810, 1.000000, 0.977557, 0.993587"
    })
    void shareOfTheBrightLines(int n, double fc, double half, double within90, double within50, double polygon) {
        assertEquals(fc, focalOfStrip(n), 1e-6);
        TraceResult wide = strips(n, 0.090).pullBack(focalOfStrip(n) - 0.5).trace(1L << 17, 51);
        TraceResult narrow = strips(n, 0.050).pullBack(focalOfStrip(n) - 0.5).trace(1L << 17, 51);
        Check.near("n " + n + ", 90 mm", within90, wide.spot().interceptFactor(), 1e-6);
        Check.near("n " + n + ", 50 mm", within50, narrow.spot().interceptFactor(), 1e-6);
        assertEquals(polygon, wide.apertureArea() / (Math.PI * 0.36), 1e-6);
        double median = half * (1 - Math.sqrt(0.5));
        Check.near("r50", median, narrow.spot().radius50().orElseThrow(), 2e-6);
        Check.near("r90", half * (1 - Math.sqrt(0.1)), narrow.spot().radius90().orElseThrow(), 2e-6);
        Check.near("r95", half * (1 - Math.sqrt(0.05)), narrow.spot().radius95().orElseThrow(), 2e-6);
    }

    /** Nothing lies beyond the ends of the lines. */
    @Test
    void linesEndWhereTheRibsDo() {
        double end = 0.6 * Math.sin(Math.PI / 12);
        Scene scene = strips(12, end + 1e-6).pullBack(focalOfStrip(12) - 0.5);
        assertEquals(0, scene.trace(1L << 17, 52).ledger().missed().value(), 0);
        assertTrue(scene.with(Scene.disc(0.99 * end))
                        .trace(1L << 17, 52)
                        .ledger()
                        .missed()
                        .value()
                > 0);
    }

    /**
     * In parallel light a ray from (x, y) of a strip crosses the plane z at (x·(z − fc)/(z0 − fc), y): whatever part of
     * the light is asked for, its radius is least in the strips' own plane fc, the lower end of fc to f (derived here).
     * The paraboloid that fits the strips best in height, whose focus lies between the two, is another notion.
     */
    @ParameterizedTest
    @CsvSource({"8", "12", "16"})
    void bestPlaneIsThatOfTheStripsAndBelowTheRibsFocus(int n) {
        double way = 0.5 - focalOfStrip(n);
        Spot best = spotAt(n, -way);
        for (double steps : new double[] {-2, -1.5, -0.5, 0, 0.5}) {
            Spot other = spotAt(n, steps * way);
            String what = "n " + n + ", " + steps + " of the way";
            Check.below(what, best.radius50().orElseThrow(), other.radius50().orElseThrow());
            Check.below(what, best.radius90().orElseThrow(), other.radius90().orElseThrow());
        }
    }

    private static Spot spotAt(int n, double pullBack) {
        return strips(n, 0.1).pullBack(pullBack).trace(1L << 17, 53).spot();
    }

    /** With the sun's full width and a mirror of 5 mrad the strips' plane still beats the ribs' focus on a 50 mm disc. */
    @ParameterizedTest
    @CsvSource({"8", "12", "16"})
    void wideSunKeepsThatOrder(int n) {
        Scene scene = strips(n, 0.05).with(new UniformDiscSun(Scene.SUN)).with(Mirror.plain(1, 5e-3));
        Estimate atRibs = scene.trace(1L << 17, 54).ledger().caught();
        Estimate atStrips = scene.pullBack(focalOfStrip(n) - 0.5)
                .trace(1L << 17, 54)
                .ledger()
                .caught();
        Check.below("n " + n, atRibs, atStrips);
    }
}
