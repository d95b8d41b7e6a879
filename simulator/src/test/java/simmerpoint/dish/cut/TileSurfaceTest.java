package simmerpoint.dish.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.dish.Cut;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.SurfaceSamples;
import simmerpoint.dish.mesh.Polygons;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Rotation;
import simmerpoint.geometry.Vec;

/** Tiles laid out by the lattice, drawn here as polygons in space: touching, apart, inside. */
class TileSurfaceTest {
    private static final String DISHES = """
            square, 1.2, 0.8, 0.06, 0.000, 0.05
            square, 1.2, 0.5, 0.10, 0.002, 0.05
            square, 0.9, 0.4, 0.00, 0.000, 0.11
            hexagon, 1.2, 0.8, 0.06, 0.000, 0.05
            hexagon, 1.2, 0.5, 0.10, 0.002, 0.06
            hexagon, 0.9, 0.4, 0.00, 0.000, 0.11
            """;

    private record Laid(DishPlan plan, TileShape shape, double tile, List<TangentPlane> planes) {
        static Laid of(String kind, double diameter, double focal, double hub, double gap, double tile) {
            TileShape shape = kind.equals("square") ? TileShape.SQUARE : TileShape.HEXAGON;
            Cut cut = kind.equals("square") ? Tiles.square(tile) : Tiles.hexagon(tile);
            DishPlan plan = new DishPlan(diameter, focal, hub, gap, cut);
            List<TangentPlane> planes = new ArrayList<>();
            new TileLattice(plan, new Tiles(shape, tile, Tiles.AtRim.LEFT_OUT)).forEach(planes::add);
            return new Laid(plan, shape, tile, planes);
        }

        /** Corners in space: a regular polygon in the plane z = 0, turned by the smallest rotation to the normal. */
        List<Vec> corners(TangentPlane plane) {
            int n = shape == TileShape.SQUARE ? 4 : 6;
            Rotation tip = Rotation.fromZTo(Direction.of(normal(plane)));
            List<Vec> corners = new ArrayList<>();
            for (int k = 0; k < n; k++) {
                double angle = (2 * k + 1) * Math.PI / n;
                double r = tile / 2 / Math.cos(Math.PI / n);
                Vec flat = new Vec(r * Math.cos(angle), r * Math.sin(angle), 0);
                corners.add(tip.apply(flat).plus(middle(plane)));
            }
            return corners;
        }

        double[][] plan(TangentPlane plane) {
            return corners(plane).stream().map(v -> new double[] {v.x(), v.y()}).toArray(double[][]::new);
        }
    }

    private static Vec normal(TangentPlane plane) {
        return new Vec(plane.nx(), plane.ny(), plane.nz());
    }

    private static Vec middle(TangentPlane plane) {
        return new Vec(plane.cx(), plane.cy(), plane.cz());
    }

    @ParameterizedTest
    @CsvSource(textBlock = DISHES)
    void tilesTouchTheParaboloidAtTheirMiddles(
            String kind, double diameter, double focal, double hub, double gap, double tile) {
        for (TangentPlane p : Laid.of(kind, diameter, focal, hub, gap, tile).planes) {
            assertEquals((p.cx() * p.cx() + p.cy() * p.cy()) / (4 * focal), p.cz(), 1e-15);
            Vec wanted = Direction.of(new Vec(-p.cx() / (2 * focal), -p.cy() / (2 * focal), 1))
                    .vec();
            assertEquals(0, wanted.minus(normal(p)).length(), 1e-14);
        }
    }

    @ParameterizedTest
    @CsvSource(textBlock = DISHES)
    void tilesLieBetweenHubAndRim(String kind, double diameter, double focal, double hub, double gap, double tile) {
        Laid laid = Laid.of(kind, diameter, focal, hub, gap, tile);
        for (TangentPlane p : laid.planes) {
            for (Vec c : laid.corners(p)) {
                assertTrue(Math.hypot(c.x(), c.y()) <= diameter / 2 + 1e-12, "beyond the rim");
            }
            if (hub > 0) {
                assertTrue(nearest(laid.plan(p)) >= hub / 2 - 1e-12, "over the hub");
            }
        }
    }

    /** Distance of the axis from a polygon in plan, looked at along its sides. */
    private static double nearest(double[][] polygon) {
        if (Polygons.contains(polygon, 0, 0)) {
            return 0;
        }
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < polygon.length; k++) {
            double[] a = polygon[k];
            double[] b = polygon[(k + 1) % polygon.length];
            for (double t = 0; t <= 1; t += 1e-3) {
                least = Math.min(least, Math.hypot(a[0] + t * (b[0] - a[0]), a[1] + t * (b[1] - a[1])));
            }
        }
        return least;
    }

    /** Pairs near enough to touch, by separating axes; they keep the gap between them. */
    @ParameterizedTest
    @CsvSource(textBlock = DISHES)
    void noTwoTilesOverlapInPlan(String kind, double diameter, double focal, double hub, double gap, double tile) {
        Laid laid = Laid.of(kind, diameter, focal, hub, gap, tile);
        List<TangentPlane> planes = laid.planes;
        for (int a = 0; a < planes.size(); a++) {
            for (int b = 0; b < a; b++) {
                if (middle(planes.get(a)).minus(middle(planes.get(b))).length() < 2 * tile) {
                    double apart = apart(laid.plan(planes.get(a)), laid.plan(planes.get(b)));
                    assertTrue(apart >= gap - 1e-12, "tiles " + a + " and " + b + " are " + apart + " m apart");
                }
            }
        }
    }

    /** Largest distance between two convex polygons along any side's normal: separating axes; below 0 if they overlap. */
    private static double apart(double[][] p, double[][] q) {
        return Math.max(clearOf(p, q), clearOf(q, p));
    }

    private static double clearOf(double[][] p, double[][] q) {
        double most = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < p.length; k++) {
            double[] a = p[k];
            double[] b = p[(k + 1) % p.length];
            double length = Math.hypot(b[0] - a[0], b[1] - a[1]);
            double least = Double.POSITIVE_INFINITY;
            for (double[] c : q) {
                double out = ((b[1] - a[1]) * (c[0] - a[0]) - (b[0] - a[0]) * (c[1] - a[1])) / length;
                least = Math.min(least, out);
            }
            most = Math.max(most, least);
        }
        return most;
    }

    @ParameterizedTest
    @CsvSource(textBlock = DISHES)
    void apertureIsTheSumOfTheTiles(String kind, double diameter, double focal, double hub, double gap, double tile) {
        Laid laid = Laid.of(kind, diameter, focal, hub, gap, tile);
        MirrorSurface surface = laid.plan.surface(Direction.Z);
        double sum = laid.planes.stream()
                .mapToDouble(p -> Polygons.area(laid.plan(p)))
                .sum();
        assertEquals(laid.planes.size(), surface.panels());
        assertEquals(sum, surface.apertureArea(), 1e-12);
        assertEquals(Math.PI * diameter * diameter / 4, surface.outlineArea(), 1e-12);
        SurfaceSamples.apertureByCounting(surface, 75_001);
    }

    /** A place is on tile k if, and only if, it lies in the outline of tile k; then in its plane with its normal. */
    @ParameterizedTest
    @CsvSource(textBlock = DISHES)
    void placesLieOnTheirTiles(String kind, double diameter, double focal, double hub, double gap, double tile) {
        Laid laid = Laid.of(kind, diameter, focal, hub, gap, tile);
        MirrorSurface surface = laid.plan.surface(Direction.Z);
        List<double[][]> plans = laid.planes.stream().map(laid::plan).toList();
        MirrorPoints p = SurfaceSamples.places(surface, 2000, 75_002);
        for (int i = 0; i < 2000; i++) {
            int wanted = MirrorPoints.GAP;
            for (int k = 0; k < plans.size(); k++) {
                wanted = Polygons.contains(plans.get(k), p.x[i], p.y[i]) ? k : wanted;
            }
            assertEquals(wanted, Math.max(MirrorPoints.GAP, p.panel[i]), "place " + i);
            if (wanted >= 0) {
                TangentPlane plane = laid.planes.get(wanted);
                Vec n = normal(plane);
                assertEquals(0, n.minus(SurfaceSamples.normal(p, i)).length(), 1e-14);
                assertEquals(0, SurfaceSamples.place(p, i).minus(middle(plane)).dot(n), 1e-14);
                assertEquals(p.z[i], surface.heightAt(p.x[i], p.y[i]), 1e-14);
            }
        }
    }
}
