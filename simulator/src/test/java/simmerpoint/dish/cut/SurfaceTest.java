package simmerpoint.dish.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import simmerpoint.dish.Cut;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.Parabola;
import simmerpoint.dish.SurfaceSamples;
import simmerpoint.dish.mesh.Polygons;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Vec;

/** Smooth dishes, flat rings and bent strips against their closed forms and against panels drawn one by one. */
class SurfaceTest {
    private static final double F = 0.5;
    private static final double R = 0.6;

    private static MirrorSurface surface(double hub, double gap, Cut cut) {
        return new DishPlan(2 * R, F, hub, gap, cut).surface(Direction.Z);
    }

    private static Cut rings(int sectors, int rings) {
        return new FlatRings(sectors, rings, RingSpacing.EQUAL_WIDTH);
    }

    /** Light that came from +z after an ideal mirror: law of reflection. */
    private static Vec reflected(Vec n) {
        return n.times(2 * n.z()).minus(Direction.Z.vec());
    }

    /** Areas that go with the places add up to the curved area: 1.22736 m², textbook, evaluated elsewhere. */
    @Test
    void curvedAreaOfTheSmoothDish() {
        MirrorSurface smooth = surface(0, 0, new Smooth());
        assertEquals(1.130973, smooth.outlineArea(), 1e-6);
        assertEquals(1.130973, smooth.apertureArea(), 1e-6);
        int n = 512;
        double[] u = new double[n * n];
        double[] v = new double[n * n];
        for (int i = 0; i < u.length; i++) {
            u[i] = (Math.floorDiv(i, n) + 0.5) / n;
            v[i] = (i % n + 0.5) / n;
        }
        MirrorPoints p = new MirrorPoints(u.length);
        smooth.fill(u, v, u.length, p);
        double sum = 0;
        for (double area : p.area) {
            sum += area / u.length;
        }
        assertEquals(1.22736, sum, 5e-6);
    }

    /** Derived, textbook: light parallel to the axis goes through the focus from anywhere on a paraboloid. */
    @Test
    void smoothDishSendsAxialLightThroughTheFocus() {
        MirrorSurface smooth = surface(0.06, 0, new Smooth());
        MirrorPoints p = SurfaceSamples.places(smooth, 2000, 74_001);
        for (int i = 0; i < 2000; i++) {
            if (p.panel[i] >= 0) {
                Vec point = SurfaceSamples.place(p, i);
                Vec out = reflected(SurfaceSamples.normal(p, i));
                Vec toFocus = new Vec(0, 0, F).minus(point);
                assertEquals(0, out.cross(toFocus).length(), 1e-12);
                assertEquals(p.z[i], smooth.heightAt(p.x[i], p.y[i]), 1e-14);
            } else {
                assertTrue(Math.hypot(p.x[i], p.y[i]) < 0.03);
            }
        }
        SurfaceSamples.apertureByCounting(smooth, 74_002);
    }

    /** Derived: polygon over circle is (n/2π)·sin(2π/n); values evaluated elsewhere. */
    @ParameterizedTest
    @CsvSource({"6, 0.826993", "8, 0.900316", "12, 0.954930", "16, 0.974495", "24, 0.988616", "32, 0.993587"})
    void polygonsLoseThisMuchOfTheCircle(int n, double share) {
        assertEquals(share, surface(0, 0, rings(n, 4)).apertureArea() / (Math.PI * R * R), 1e-6);
        assertEquals(share, surface(0, 0, new BentStrips(n)).apertureArea() / (Math.PI * R * R), 1e-6);
    }

    /** Worked elsewhere with a tracer in another language: hub corners on radius 0.03, 24 sectors, D 1.2. */
    @Test
    void apertureOfTheReferenceDishes() {
        assertEquals(1.115303, surface(0.06, 0, rings(24, 6)).apertureArea(), 1e-6);
        assertEquals(1.115303, surface(0.06, 0, new BentStrips(24)).apertureArea(), 1e-6);
        assertEquals(1.128146, surface(0.06, 0, new Smooth()).apertureArea(), 1e-6);
    }

    /**
     * A strip between parabolic ribs is a parabolic cylinder of focal length f·cos²β: along its middle the heights of a
     * twelfth of a dish are those evaluated elsewhere (derived: ribs z = r²/4f, chords from rib to rib).
     */
    @ParameterizedTest
    @CsvSource({"0.1, 0.005359", "0.2, 0.021436", "0.3, 0.048231", "0.4, 0.085744", "0.5, 0.133975"})
    void heightsAlongAStripsMiddle(double x, double z) {
        MirrorSurface strips = surface(0, 0, new BentStrips(12));
        double c = Math.cos(Math.PI / 12);
        double s = Math.sin(Math.PI / 12);
        assertEquals(z, strips.heightAt(x * c, x * s), 1e-6);
        assertEquals(z, strips.heightAt(x * c + 0.02 * s, x * s - 0.02 * c), 1e-6, "level across");
    }

    /** Derived: axial light from (x, y) of a strip goes to (0, y, f·cos²β) in the strip's own frame. */
    @ParameterizedTest
    @ValueSource(ints = {3, 6, 12, 24})
    void stripsSendAxialLightToALine(int n) {
        double beta = Math.PI / n;
        double lineHeight = F * Math.cos(beta) * Math.cos(beta);
        MirrorPoints p = SurfaceSamples.places(surface(0, 0, new BentStrips(n)), 500, 74_003);
        for (int i = 0; i < 500; i++) {
            double turn = (2 * p.panel[i] + 1) * beta;
            double y = p.y[i] * Math.cos(turn) - p.x[i] * Math.sin(turn);
            Vec target = new Vec(-y * Math.sin(turn), y * Math.cos(turn), lineHeight);
            assertEquals(
                    0,
                    reflected(SurfaceSamples.normal(p, i))
                            .cross(target.minus(SurfaceSamples.place(p, i)))
                            .length(),
                    1e-12);
        }
    }

    /** Corner {@code (rib, border)} of the flat panels: on the paraboloid. */
    private static Vec corner(int sectors, int rings, double hub, int rib, int border) {
        double r = hub / 2 + (R - hub / 2) * border / rings;
        double angle = 2 * Math.PI * rib / sectors;
        return new Vec(r * Math.cos(angle), r * Math.sin(angle), r * r / (4 * F));
    }

    private static List<Vec> panel(int sectors, int rings, double hub, int number) {
        int k = number / rings;
        int j = number % rings;
        return List.of(
                corner(sectors, rings, hub, k, j),
                corner(sectors, rings, hub, k, j + 1),
                corner(sectors, rings, hub, k + 1, j + 1),
                corner(sectors, rings, hub, k + 1, j));
    }

    /** What is left of a polygon on the left of the line from a to b, moved left by {@code inset}; n is its normal. */
    private static List<Vec> cutBack(List<Vec> polygon, Vec a, Vec b, Vec n, double inset) {
        Vec left = Direction.of(n.cross(b.minus(a))).vec();
        List<Vec> out = new ArrayList<>();
        for (int i = 0; i < polygon.size(); i++) {
            Vec p = polygon.get(i);
            Vec q = polygon.get((i + 1) % polygon.size());
            double dp = p.minus(a).dot(left) - inset;
            double dq = q.minus(a).dot(left) - inset;
            if (dp >= 0) {
                out.add(p);
            }
            if (dp * dq < 0) {
                out.add(p.plus(q.minus(p).times(dp / (dp - dq))));
            }
        }
        return out;
    }

    private static double planArea(List<Vec> polygon) {
        return Polygons.area(
                polygon.stream().map(v -> new double[] {v.x(), v.y()}).toArray(double[][]::new));
    }

    /** A flat panel after the gap: half of it off each edge that a neighbour shares, measured in the panel's plane. */
    private static List<Vec> trimmed(int sectors, int rings, double hub, double gap, int number) {
        List<Vec> whole = panel(sectors, rings, hub, number);
        Vec n = Direction.of(whole.get(1).minus(whole.get(0)).cross(whole.get(2).minus(whole.get(1))))
                .vec();
        List<Vec> left = whole;
        for (int e = 0; e < 4; e++) {
            int ring = number % rings;
            boolean free = (e == 1 && ring == rings - 1) || (e == 3 && ring == 0);
            if (!free) {
                left = cutBack(left, whole.get(e), whole.get((e + 1) % 4), n, gap / 2);
            }
        }
        return left;
    }

    /** Sum of the panels drawn and trimmed one by one, gaps up to the width of whole panels near the hub. */
    @ParameterizedTest
    @CsvSource({
        "24, 6, 0.06, 0",
        "24, 6, 0.06, 0.002",
        "12, 3, 0.1, 0.01",
        "3, 2, 0.06, 0.02",
        "24, 6, 0.06, 0.03",
        "8, 1, 0, 0.004"
    })
    void flatPanelsAddUpToTheAperture(int sectors, int rings, double hub, double gap) {
        MirrorSurface s = surface(hub, gap, rings(sectors, rings));
        double sum = 0;
        for (int k = 0; k < sectors * rings; k++) {
            sum += planArea(trimmed(sectors, rings, hub, gap, k));
        }
        assertEquals(sum, s.apertureArea(), 1e-12);
        assertEquals(sectors * rings, s.panels());
        SurfaceSamples.apertureByCounting(s, 74_004);
    }

    /** Every place lies in the plane of its panel, within its trimmed outline, and carries the panel's normal. */
    @ParameterizedTest
    @CsvSource({"24, 6, 0.06, 0.004", "5, 2, 0.2, 0.03", "3, 1, 0, 0"})
    void placesLieOnTheirFlatPanels(int sectors, int rings, double hub, double gap) {
        MirrorSurface surface = surface(hub, gap, rings(sectors, rings));
        MirrorPoints p = SurfaceSamples.places(surface, 3000, 74_005);
        for (int i = 0; i < 3000; i++) {
            if (p.panel[i] >= 0) {
                List<Vec> panel = panel(sectors, rings, hub, p.panel[i]);
                Vec across = panel.get(2).minus(panel.get(1));
                Vec n = Direction.of(panel.get(1).minus(panel.get(0)).cross(across))
                        .vec();
                assertEquals(0, n.minus(SurfaceSamples.normal(p, i)).length(), 1e-12);
                assertEquals(0, SurfaceSamples.place(p, i).minus(panel.get(1)).dot(n), 1e-12);
                assertEquals(p.z[i], surface.heightAt(p.x[i], p.y[i]), 1e-12);
                double[][] plan = trimmed(sectors, rings, hub, gap, p.panel[i]).stream()
                        .map(v -> new double[] {v.x(), v.y()})
                        .toArray(double[][]::new);
                assertTrue(Polygons.contains(plan, p.x[i], p.y[i]), "place " + i + " beside its panel");
            }
        }
    }

    /**
     * A place on a strip is on the mirror if the rib, as a fine chain of points in the flattened strip, is further off
     * than half the gap. Places within a tenth of the gap of that bound are passed over.
     */
    @ParameterizedTest
    @CsvSource({"6, 0.02", "24, 0.004", "12, 0.05"})
    void gapsOfStripsAreMeasuredOnTheMirror(int n, double gap) {
        double beta = Math.PI / n;
        double hub = 0.1;
        MirrorSurface strips = surface(hub, gap, new BentStrips(n));
        Parabola along = new Parabola(F * Math.cos(beta) * Math.cos(beta));
        MirrorPoints p = SurfaceSamples.places(strips, 4000, 74_006);
        int judged = 0;
        for (int i = 0; i < 4000; i++) {
            int k = Math.floorMod((int) Math.floor(Math.atan2(p.y[i], p.x[i]) / (2 * beta)), n);
            double turn = (2 * k + 1) * beta;
            double x = p.x[i] * Math.cos(turn) + p.y[i] * Math.sin(turn);
            double y = Math.abs(p.y[i] * Math.cos(turn) - p.x[i] * Math.sin(turn));
            double off = Double.POSITIVE_INFINITY;
            for (double t = x - 0.06; t <= x + 0.06; t += 1e-3) {
                double ds = along.arcLength(t) - along.arcLength(x);
                off = Math.min(off, Math.hypot(ds, t * Math.tan(beta) - y));
            }
            if (x > hub / 2 * Math.cos(beta) && Math.abs(off - gap / 2) > 0.1 * gap) {
                judged++;
                assertEquals(off > gap / 2 ? k : ~k, p.panel[i], "place " + i);
            }
        }
        assertTrue(judged > 2000, "judged only " + judged);
        SurfaceSamples.apertureByCounting(strips, 74_007);
    }

    /** Same pairs of numbers, same places, whatever the cut, so that cuts can be compared. */
    @Test
    void cutsShareTheirPlaces() {
        MirrorPoints smooth = SurfaceSamples.places(surface(0.06, 0, new Smooth()), 500, 74_008);
        MirrorPoints strips = SurfaceSamples.places(surface(0.06, 0, new BentStrips(48)), 500, 74_008);
        MirrorPoints flat = SurfaceSamples.places(surface(0.06, 0, rings(48, 12)), 500, 74_008);
        for (int i = 0; i < 500; i++) {
            assertEquals(
                    0,
                    SurfaceSamples.place(strips, i)
                            .minus(SurfaceSamples.place(flat, i))
                            .length(),
                    2e-3);
            assertEquals(
                    0,
                    SurfaceSamples.place(strips, i)
                            .minus(SurfaceSamples.place(smooth, i))
                            .length(),
                    5e-3);
        }
    }

    /** tan of the rim's slope is r/2f on the ribs; flat and bent panels between them are less steep than a rim of f·cos²β. */
    @Test
    void steepestSlopes() {
        assertEquals(Math.atan(0.6), surface(0, 0, new Smooth()).steepestSlope(), 1e-12);
        double flat = surface(0, 0, rings(24, 6)).steepestSlope();
        assertTrue(flat < Math.atan(0.6 / Math.cos(Math.PI / 24)) && flat > Math.atan(0.5));
        assertEquals(
                Math.atan(0.6 / Math.cos(Math.PI / 24)),
                surface(0, 0, new BentStrips(24)).steepestSlope(),
                1e-12);
    }

    /** A gap wider than the strips leaves nothing. */
    @Test
    void aGapWiderThanThePanelsLeavesNothing() {
        assertEquals(0, surface(0.06, 0.2, new BentStrips(48)).apertureArea());
        assertEquals(0, surface(0.06, 0.2, rings(48, 6)).apertureArea());
    }

    @Test
    void plansRefuseWhatCannotBeBuilt() {
        Cut cut = new Smooth();
        assertThrows(IllegalArgumentException.class, () -> new DishPlan(Double.NaN, 1, 0, 0, cut));
        assertThrows(IllegalArgumentException.class, () -> new DishPlan(1, 0, 0, 0, cut));
        assertThrows(IllegalArgumentException.class, () -> new DishPlan(1, 1, 1, 0, cut));
        assertThrows(IllegalArgumentException.class, () -> new DishPlan(1, 1, 0, 0.5, cut));
        assertThrows(IllegalArgumentException.class, () -> new DishPlan(1, 1, 0, 0, null));
        assertThrows(IllegalArgumentException.class, () -> new BentStrips(2));
        assertThrows(IllegalArgumentException.class, () -> Tiles.square(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> surface(0.5, 0, Tiles.square(0.6)));
    }
}
