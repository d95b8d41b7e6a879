package simmerpoint.dish.points;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The smooth shape through points of surfaces that are known in closed form. */
class MeasuredShapeTest {
    private static final double FOCAL = 0.7;
    private static final double RADIUS = 0.6;

    private static double paraboloid(double x, double y) {
        return (x * x + y * y) / (4 * FOCAL);
    }

    /** A sphere of radius 2f: no paraboloid, so that the fits are not exact. */
    private static double sphere(double x, double y) {
        return 2 * FOCAL - Math.sqrt(4 * FOCAL * FOCAL - x * x - y * y);
    }

    private static MeasuredPoints points(List<double[]> plan, DoubleBinaryOperator height) {
        return new MeasuredPoints(
                plan.stream().mapToDouble(p -> p[0]).toArray(),
                plan.stream().mapToDouble(p -> p[1]).toArray(),
                plan.stream().mapToDouble(p -> height.applyAsDouble(p[0], p[1])).toArray());
    }

    /** A square grid within a circle, and the circle itself. */
    private static List<double[]> grid(double spacing, int onRim) {
        List<double[]> plan = new ArrayList<>();
        int n = (int) (RADIUS / spacing);
        for (int i = -n; i <= n; i++) {
            for (int j = -n; j <= n; j++) {
                if (Math.hypot(i * spacing, j * spacing) < RADIUS - spacing / 2) {
                    plan.add(new double[] {i * spacing, j * spacing});
                }
            }
        }
        for (int k = 0; k < onRim; k++) {
            double angle = 2 * Math.PI * k / onRim;
            plan.add(new double[] {RADIUS * Math.cos(angle), RADIUS * Math.sin(angle)});
        }
        return plan;
    }

    private static List<double[]> scattered(int count) {
        Random chance = new Random(3);
        List<double[]> plan = new ArrayList<>();
        while (plan.size() < count) {
            double x = RADIUS * (2 * chance.nextDouble() - 1);
            double y = RADIUS * (2 * chance.nextDouble() - 1);
            if (Math.hypot(x, y) < RADIUS) {
                plan.add(new double[] {x, y});
            }
        }
        return plan;
    }

    /** Twelve spokes of seven holes each, as somebody measures with a straight edge and a rule. */
    private static List<double[]> spokes() {
        List<double[]> plan = new ArrayList<>(List.of(new double[] {0, 0}));
        for (int k = 0; k < 12; k++) {
            for (int r = 1; r <= 7; r++) {
                double angle = 2 * Math.PI * k / 12;
                plan.add(new double[] {RADIUS * r / 7 * Math.cos(angle), RADIUS * r / 7 * Math.sin(angle)});
            }
        }
        return plan;
    }

    /** Error (root mean square) of height, m, and of slope in a disc of that radius about the middle. */
    private static double[] errors(MeasuredShape shape, DoubleBinaryOperator height, double dx, double within) {
        double[] worst = new double[2];
        int count = 0;
        double[] found = new double[3];
        double small = 1e-5;
        for (int i = -40; i <= 40; i++) {
            for (int j = -40; j <= 40; j++) {
                double x = within * i / 40 * 0.999;
                double y = within * j / 40 * 0.999;
                if (Math.hypot(x, y) > within) {
                    continue;
                }
                assertTrue(shape.at(x + dx, y, found));
                double p = (height.applyAsDouble(x + small, y) - height.applyAsDouble(x - small, y)) / (2 * small);
                double q = (height.applyAsDouble(x, y + small) - height.applyAsDouble(x, y - small)) / (2 * small);
                worst[0] += Math.pow(found[0] - height.applyAsDouble(x, y), 2);
                worst[1] += Math.pow(found[1] - p, 2) + Math.pow(found[2] - q, 2);
                count++;
            }
        }
        return new double[] {Math.sqrt(worst[0] / count), Math.sqrt(worst[1] / count)};
    }

    @Test
    void aParaboloidComesOutExactlyHoweverItsPointsLie() {
        for (List<double[]> plan : List.of(grid(0.05, 60), scattered(400), spokes())) {
            MeasuredShape shape = new MeasuredShape("p", points(plan, MeasuredShapeTest::paraboloid));
            assertEquals(FOCAL, shape.focalLength(), 1e-9);
            assertEquals(0, shape.offParaboloid(), 1e-12);
            double[] off = errors(shape, MeasuredShapeTest::paraboloid, 0, 0.5);
            assertEquals(0, off[0], 1e-7, "heights, kept in single precision");
            assertEquals(0, off[1], 1e-6, "slopes");
            assertEquals(shape.outlineArea(), shape.mirrorArea(), 0);
        }
    }

    /** Part of a paraboloid beside its axis, measured from anywhere: the vertex is brought to 0. */
    @Test
    void theOriginIsAsGoodAsAnyOther() {
        DoubleBinaryOperator moved = (x, y) -> paraboloid(x + 0.45, y - 0.02) + 0.3;
        MeasuredShape shape = new MeasuredShape("p", points(grid(0.05, 60), moved));
        assertEquals(FOCAL, shape.focalLength(), 1e-9);
        assertEquals(0.45, shape.circle()[0], 1e-6);
        assertEquals(-0.02, shape.circle()[1], 1e-6);
        assertEquals(RADIUS, shape.circle()[2], 1e-6);
        double[] found = new double[3];
        assertTrue(shape.at(0.45, 0.1, found));
        assertEquals(paraboloid(0.45, 0.1), found[0], 1e-7);
    }

    /** Half the spacing, a quarter of the error of the slopes or less (second order), of the heights an eighth or so. */
    @Test
    void aSphereComesNearerWithTheSquareOfTheSpacing() {
        double[] before = null;
        for (double spacing : new double[] {0.08, 0.04, 0.02}) {
            MeasuredShape shape =
                    new MeasuredShape("s", points(grid(spacing, (int) (3 / spacing)), MeasuredShapeTest::sphere));
            double vertex = BestParaboloid.of(points(grid(spacing, (int) (3 / spacing)), MeasuredShapeTest::sphere))
                    .vertexZ();
            double[] now = errors(shape, (x, y) -> sphere(x, y) - vertex, 0, 0.4);
            if (before != null) {
                assertTrue(now[1] < before[1] / 3.4, before[1] + " " + now[1]);
                assertTrue(now[0] < before[0] / 3.4, before[0] + " " + now[0]);
            }
            before = now;
        }
        assertTrue(before[1] < 2e-4, "slopes to a fifth of a milliradian at 2 cm: " + before[1]);
    }

    /** A polygon of n corners on a circle: n/2·R²·sin(2π/n), so that what is cut off goes down by four as n doubles. */
    @ParameterizedTest
    @ValueSource(ints = {24, 48, 96, 192})
    void theOutlineIsThePolygonOfTheOuterPoints(int corners) {
        MeasuredShape shape = new MeasuredShape("p", points(grid(0.04, corners), MeasuredShapeTest::paraboloid));
        double polygon = corners / 2.0 * RADIUS * RADIUS * Math.sin(2 * Math.PI / corners);
        assertEquals(corners, shape.corners().size());
        assertEquals(polygon, shape.outlineArea(), 1e-12);
    }

    @Test
    void placesAreDrawnEvenly() {
        MeasuredShape shape = new MeasuredShape("p", points(grid(0.05, 40), MeasuredShapeTest::paraboloid));
        double[] x = new double[1];
        double[] y = new double[1];
        int n = 400;
        double meanX = 0;
        double square = 0;
        for (int k = 0; k < n * n; k++) {
            int row = k / n;
            shape.place((k % n + 0.5) / n, (row + 0.5) / n, x, y, 0);
            assertTrue(Math.hypot(x[0], y[0]) <= RADIUS + 1e-9);
            meanX += x[0] / (n * n);
            square += (x[0] * x[0] + y[0] * y[0]) / (n * n);
        }
        assertEquals(0, meanX, 1e-9);
        // Of a regular polygon about its middle: R²/6·(2 + cos(2π/n)).
        assertEquals(RADIUS * RADIUS / 6 * (2 + Math.cos(2 * Math.PI / 40)), square, 1e-5);
    }

    @Test
    void aHoleWithoutPointsIsNoMirror() {
        List<double[]> ring = grid(0.02, 200);
        ring.removeIf(p -> Math.hypot(p[0], p[1]) < 0.2);
        MeasuredShape shape = new MeasuredShape("p", points(ring, MeasuredShapeTest::paraboloid));
        double[] found = new double[3];
        assertFalse(shape.at(0.01, 0, found));
        assertTrue(shape.at(0.25, 0, found));
        double hole = shape.outlineArea() - shape.mirrorArea();
        assertTrue(
                hole > Math.PI * 0.16 * 0.16 && hole < Math.PI * 0.21 * 0.21, "a spacing or two at its edge: " + hole);
        List<double[]> one = grid(0.02, 200);
        one.removeIf(p -> Math.hypot(p[0], p[1]) < 0.01);
        MeasuredShape bridged = new MeasuredShape("p", points(one, MeasuredShapeTest::paraboloid));
        assertEquals(bridged.outlineArea(), bridged.mirrorArea(), 0, "a missing point is no hole");
    }

    /** A ripple A·sin kx has slopes of A·k/√2 in the root mean square (closed form), if the points follow it. */
    @Test
    void slopesOffTheParaboloid() {
        double k = 2 * Math.PI / 0.3;
        MeasuredShape shape = new MeasuredShape(
                "ripples", points(grid(0.02, 100), (x, y) -> paraboloid(x, y) + 0.001 * Math.sin(k * x)));
        assertEquals(0.001 * k / Math.sqrt(2), shape.slopesOffParaboloid(), 0.05 * 0.001 * k);
        assertEquals(
                0,
                new MeasuredShape("p", points(grid(0.05, 40), MeasuredShapeTest::paraboloid)).slopesOffParaboloid(),
                1e-6);
    }

    /** Many bowls measured by the same rough hand: the focal lengths scatter as each of them says they do. */
    @Test
    void theDoubtOfTheFocalLengthIsItsScatter() {
        List<double[]> plan = grid(0.1, 20);
        int bowls = 200;
        double squares = 0;
        double told = 0;
        for (int seed = 0; seed < bowls; seed++) {
            Random chance = new Random(seed);
            MeasuredPoints noisy = points(plan, (x, y) -> paraboloid(x, y) + 0.003 * chance.nextGaussian());
            BestParaboloid best = BestParaboloid.of(noisy);
            squares += Math.pow(best.focalLength() - FOCAL, 2);
            told += Math.pow(best.focalDeviation(noisy), 2);
        }
        double scatter = Math.sqrt(squares / bowls);
        // The scatter of 200 is sure to 1/√400 = 5 %, four standard errors are 20 %; neighbours that are alike by
        // chance make what is told a tenth more cautious.
        double ratio = Math.sqrt(told / bowls) / scatter;
        assertTrue(ratio > 0.8 && ratio < 1.3, "told over found " + ratio);
    }
}
