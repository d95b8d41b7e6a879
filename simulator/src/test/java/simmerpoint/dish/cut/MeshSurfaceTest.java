package simmerpoint.dish.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.SurfaceSamples;
import simmerpoint.dish.mesh.Mesh;
import simmerpoint.dish.mesh.Polygons;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Vec;

class MeshSurfaceTest {
    /** A square frame: outer side 1, hole of side 0.4, four trapezoids in the plane z = 0. */
    private static final Mesh FRAME = new Mesh(
            "frame",
            new double[] {
                -0.5, -0.5, 0, 0.5, -0.5, 0, 0.5, 0.5, 0, -0.5, 0.5, 0, -0.2, -0.2, 0, 0.2, -0.2, 0, 0.2, 0.2, 0, -0.2,
                0.2, 0
            },
            new int[] {0, 1, 5, 4, 1, 2, 6, 5, 2, 3, 7, 6, 3, 0, 4, 7},
            new int[] {0, 4, 8, 12, 16});

    private static final double[][] LETTER_L = {{0, 0}, {0.6, 0}, {0.6, 0.2}, {0.2, 0.2}, {0.2, 0.6}, {0, 0.6}};

    /** Sum of the areas of places in gaps, and its standard error from the places as independent draws. */
    private static void gapIs(double wanted, MirrorSurface surface, long seed) {
        int n = 200_000;
        MirrorPoints p = SurfaceSamples.places(surface, n, seed);
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < n; i++) {
            double a = p.panel[i] < 0 ? p.area[i] : 0;
            sum += a / n;
            squares += a * a / n;
        }
        double error = Math.sqrt((squares - sum * sum) / n);
        assertEquals(wanted, sum, 4 * error, "4 standard errors: 1 in 16,000");
    }

    @Test
    void aHoleIsMeasuredAsGap() {
        MirrorSurface surface = new MeshSurface(FRAME, Direction.Z);
        assertEquals(1, surface.outlineArea(), 1e-12);
        assertEquals(0.84, surface.apertureArea(), 1e-12);
        assertEquals(4, surface.panels());
        assertEquals(Math.sqrt(0.5), surface.radius(), 1e-12);
        gapIs(0.16, surface, 76_001);
    }

    /** Flat frame: under a slanting sun the hole is as large in plan, since hole and frame are in one plane. */
    @Test
    void aHoleInOnePlaneIsAsLargeUnderASlantingSun() {
        gapIs(0.16, new MeshSurface(FRAME, Direction.tiltedFromZ(0.5, -0.3)), 76_002);
    }

    /** Two squares of side 1, 0.5 apart, one 0.2 above the other: a sun slanting by tan t narrows the slit by 0.2·tan t. */
    @ParameterizedTest
    @CsvSource({"0, 0.5", "1, 0.3", "-1, 0.7"})
    void aStepHidesPartOfASlit(double tangent, double slit) {
        Mesh steps = new Mesh(
                "steps",
                new double[] {0, 0, 0, 1, 0, 0, 1, 1, 0, 0, 1, 0, 1.5, 0, 0.2, 2.5, 0, 0.2, 2.5, 1, 0.2, 1.5, 1, 0.2},
                new int[] {0, 1, 2, 3, 4, 5, 6, 7},
                new int[] {0, 4, 8});
        Direction sun = Direction.of(new Vec(tangent, 0, 1));
        // Seen at the height of the upper square, where the outline is probed, the lower one is cast towards the sun;
        // the outline from x = 0 to 2.5 then has a free edge of the same width at its other end.
        double free = tangent > 0 ? 0.2 * tangent : 0;
        gapIs(slit + free, new MeshSurface(steps, sun), 76_003);
    }

    @Test
    void aConcavePolygonIsFilledOnceAndOnlyInside() {
        MirrorSurface surface = new MeshSurface(Polygons.inPlane(LETTER_L, 0.3, -0.2), Direction.Z);
        assertEquals(0.2, surface.apertureArea(), 1e-12);
        assertEquals(0.28, surface.outlineArea(), 1e-12);
        int n = 60_000;
        MirrorPoints p = SurfaceSamples.places(surface, n, 76_004);
        Vec normal = Direction.of(new Vec(-0.3, 0.2, 1)).vec();
        int inCorner = 0;
        int on = 0;
        for (int i = 0; i < n; i++) {
            if (p.panel[i] >= 0) {
                on++;
                assertTrue(Polygons.contains(LETTER_L, p.x[i], p.y[i]), "place " + i);
                assertEquals(0.3 * p.x[i] - 0.2 * p.y[i], p.z[i], 1e-14);
                assertEquals(0, normal.minus(SurfaceSamples.normal(p, i)).length(), 1e-14);
                inCorner += p.x[i] < 0.2 && p.y[i] < 0.2 ? 1 : 0;
            }
        }
        double share = (double) inCorner / on;
        assertEquals(0.2, share, 4 * Math.sqrt(0.16 / on), "evenly filled, 4 standard errors");
        gapIs(0.08, surface, 76_005);
    }

    /** Polygons that run clockwise still face up. */
    @Test
    void normalsFaceTheSkyHoweverThePolygonRuns() {
        double[][] backwards = {{0, 0}, {0, 1}, {1, 0}};
        MirrorSurface surface = new MeshSurface(Polygons.inPlane(backwards, 0.5, 0), Direction.Z);
        MirrorPoints p = SurfaceSamples.places(surface, 100, 76_006);
        for (int i = 0; i < 100; i++) {
            assertTrue(p.nz[i] > 0 && p.nx[i] < 0);
        }
        assertEquals(Math.atan(0.5), surface.steepestSlope(), 1e-12);
    }

    @Test
    void heightIsThatOfTheUppermostPanel() {
        MirrorSurface surface = new MeshSurface(Polygons.inPlane(LETTER_L, 0.3, -0.2), Direction.Z);
        assertEquals(0.3 * 0.4 - 0.2 * 0.1, surface.heightAt(0.4, 0.1), 1e-9);
        assertEquals(Double.NEGATIVE_INFINITY, surface.heightAt(0.4, 0.4));
    }

    /** Flat panels of a bowl as a mesh are the same surface as the bowl: same area, and they cannot hide each other. */
    @Test
    void aMeshedBowlHidesNothingAndABentOneDoes() {
        Mesh bowl = bowl(0);
        MirrorSurface surface = new MeshSurface(bowl, Direction.Z);
        MirrorSurface wanted =
                new DishPlan(1.2, 0.8, 0.3, 0, new FlatRings(12, 1, RingSpacing.EQUAL_WIDTH)).surface(Direction.Z);
        assertEquals(wanted.apertureArea(), surface.apertureArea(), 1e-12);
        assertTrue(surface.blockingPanels().isEmpty());
        assertFalse(new MeshSurface(bowl(0.05), Direction.Z).blockingPanels().isEmpty(), "one panel lifted");
        assertFalse(
                new MeshSurface(bowl, Direction.tiltedFromZ(1.2, 0))
                        .blockingPanels()
                        .isEmpty(),
                "sun far off the axis");
    }

    /** Twelve trapezoids round a hub; the first one lifted. */
    private static Mesh bowl(double lift) {
        double[] vertices = new double[12 * 12];
        int[] corners = new int[48];
        int[] first = new int[13];
        for (int k = 0; k < 12; k++) {
            for (int c = 0; c < 4; c++) {
                double r = c == 1 || c == 2 ? 0.6 : 0.15;
                double angle = 2 * Math.PI * (c >= 2 ? k + 1 : k) / 12;
                int at = 4 * k + c;
                vertices[3 * at] = r * Math.cos(angle);
                vertices[3 * at + 1] = r * Math.sin(angle);
                vertices[3 * at + 2] = r * r / 3.2 + (k == 0 ? lift : 0);
                corners[at] = at;
            }
            first[k + 1] = 4 * k + 4;
        }
        return new Mesh("bowl", vertices, corners, first);
    }
}
