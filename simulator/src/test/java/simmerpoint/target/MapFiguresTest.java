package simmerpoint.target;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleBinaryOperator;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.api.Test;
import simmerpoint.pan.Finish;
import simmerpoint.pan.GrazingAbsorptance;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Plane;
import simmerpoint.sampling.Estimate;

/** Figures taken from flux maps, on maps made up here so that the answer is known. */
class MapFiguresTest {
    private static final double RADIUS = 0.1;
    private static final TargetGrids GRIDS = TargetGrids.of(new Plane(2 * RADIUS, 0), 0.01);

    /** A replicate of one ray whose map holds {@code flux} (W/m²) at the middle of each cell. */
    private static Tally tally(TargetGrids grids, DoubleBinaryOperator flux) {
        Tally tally = new Tally(grids);
        tally.rays = 1;
        Grid grid = grids.plane();
        for (int c = 0; c < grid.cells(); c++) {
            double x = grid.first(c % grid.columns());
            double y = grid.second(c / grid.columns());
            tally.planeMap[c] = flux.applyAsDouble(x, y) * grid.cellArea();
        }
        return tally;
    }

    private static List<Tally> tallies(int n, IntFunction<DoubleBinaryOperator> flux) {
        return IntStream.range(0, n).mapToObj(r -> tally(GRIDS, flux.apply(r))).toList();
    }

    private static double cone(double x, double y, double mx, double my) {
        return Math.max(0, 1000 * (1 - Math.hypot(x - mx, y - my) / 0.05));
    }

    @Test
    void peakIsFoundWhereTheLightIs() {
        PeakSearch.Peak peak = new PeakSearch(GRIDS).find(tallies(8, r -> (x, y) -> cone(x, y, 0.03, -0.05)));
        assertEquals(0.03, peak.x(), GRIDS.plane().cellWidth());
        assertEquals(-0.05, peak.y(), GRIDS.plane().cellWidth());
        // Mean of a cone over a disc of radius a about its tip: 1 − 2a/3h of its height, the disc being made of cells.
        assertEquals(1000 * (1 - 2.0 / 3 * 0.01 / 0.05), peak.flux().value(), 15);
        assertEquals(0, peak.flux().standardError(), 1e-9);
    }

    /** The first half says where, the second how much: a glare that only the first half has seen counts for nothing. */
    @Test
    void placeAndValueComeFromDifferentHalves() {
        PeakSearch.Peak peak = new PeakSearch(GRIDS)
                .find(tallies(8, r -> (x, y) -> r < 4 ? cone(x, y, -0.04, 0.02) : 7 + 2.0 * (r % 2)));
        assertEquals(-0.04, peak.x(), GRIDS.plane().cellWidth());
        assertEquals(8, peak.flux().value(), 1e-9);
        assertEquals(Math.sqrt(4.0 / 3 / 4), peak.flux().standardError(), 1e-9);
    }

    @Test
    void peakDiscLiesWhollyOnTheTarget() {
        PeakSearch.Peak peak = new PeakSearch(GRIDS).find(tallies(4, r -> (x, y) -> Math.max(0, x)));
        assertTrue(Math.hypot(peak.x(), peak.y()) <= RADIUS - 0.01 + 1e-9);
        assertEquals(RADIUS - 0.01, peak.x(), 2 * GRIDS.plane().cellWidth());
    }

    @Test
    void peakDiscIsNeverLargerThanTheTarget() {
        TargetGrids grids = TargetGrids.of(new Plane(0.004, 0), 0.01);
        assertEquals(0.002, grids.peakDiscRadius());
        PeakSearch.Peak peak =
                new PeakSearch(grids).find(List.of(tally(grids, (x, y) -> 5), tally(grids, (x, y) -> 5)));
        assertEquals(5, peak.flux().value(), 1e-9);
        assertEquals(0.002, TargetGrids.of(new Plane(0.2, 0), 1e-9).peakDiscRadius(), 1e-15);
    }

    /** Even light with noise is even: squares of one replicate would show the noise instead. */
    @Test
    void noiseIsNotUnevenness() {
        SplittableRandom random = new SplittableRandom(92_001);
        Estimate e = Evenness.of(tallies(16, r -> (x, y) -> 500 + 400 * random.nextGaussian()));
        assertTrue(e.value() < 0.05, "evenness " + e);
        assertTrue(e.standardError() < 0.05 && e.standardError() > 0, "evenness " + e);
    }

    /** A slope in x of ±50 % over the disc: standard deviation ÷ mean = 0.5/2 (derived: mean of x² over a disc is R²/4). */
    @Test
    void evennessOfASlope() {
        Estimate e = Evenness.of(tallies(4, r -> (x, y) -> 300 * (1 + 0.5 * x / RADIUS)));
        assertEquals(0.25, e.value(), 0.006);
        assertEquals(0, e.standardError(), 1e-6);
    }

    /**
     * The same slope under noise, 120 times: the mean within 4 standard errors of the noiseless map's answer (1 in
     * 16,000), and the spread what is claimed within 25 % (120 values know it to 6.5 %).
     */
    @Test
    void evennessIsUnbiasedAndKnowsItsError() {
        double truth = Evenness.of(tallies(4, r -> (x, y) -> 300 * (1 + 0.5 * x / RADIUS)))
                .value();
        SplittableRandom random = new SplittableRandom(92_002);
        SummaryStatistics values = new SummaryStatistics();
        SummaryStatistics claimed = new SummaryStatistics();
        for (int trial = 0; trial < 120; trial++) {
            Estimate e =
                    Evenness.of(tallies(8, r -> (x, y) -> 300 * (1 + 0.5 * x / RADIUS) + 400 * random.nextGaussian()));
            values.addValue(e.value());
            claimed.addValue(e.standardError() * e.standardError());
        }
        double spread = values.getStandardDeviation();
        assertEquals(truth, values.getMean(), 4 * spread / Math.sqrt(120));
        assertEquals(1, spread / Math.sqrt(claimed.getMean()), 0.25);
    }

    @Test
    void aDarkTargetIsEven() {
        assertEquals(Estimate.exact(0), Evenness.of(tallies(4, r -> (x, y) -> 0)));
    }

    /** An even disc of light: the share s of it lies within √s of its radius; to a four-hundredth of the target. */
    @Test
    void radiiOfAnEvenDisc() {
        RadialHistogram sums = new RadialHistogram(RADIUS);
        int n = 200_000;
        for (int i = 0; i < n; i++) {
            sums.add(0.25 * Math.sqrt((i + 0.5) / n), 1.0 / n);
        }
        for (double share : new double[] {0.1, 0.5, 0.9, 0.95, 0.999}) {
            assertEquals(0.25 * Math.sqrt(share), sums.radiusContaining(share).orElseThrow(), RADIUS / 400);
        }
        assertTrue(sums.radiusContaining(1.01).isEmpty());
    }

    /** Far out the bins grow by one in a hundred, and beyond about 400 radii light is no longer kept. */
    @Test
    void farLightIsFoundToOneInAHundred() {
        for (double r : new double[] {0.41, 1, 5, 20, 39}) {
            RadialHistogram sums = new RadialHistogram(RADIUS);
            sums.add(r, 3);
            assertEquals(r, sums.radiusContaining(1.5).orElseThrow(), 0.01 * r);
        }
        RadialHistogram beyond = new RadialHistogram(RADIUS);
        beyond.add(45, 3);
        assertTrue(beyond.radiusContaining(1).isEmpty());
    }

    @Test
    void radialSumsAddAndTakeAway() {
        RadialHistogram a = new RadialHistogram(RADIUS);
        RadialHistogram b = new RadialHistogram(RADIUS);
        a.add(0.05, 2);
        b.add(0.05, 2);
        b.add(0.2, 6);
        a.add(b, 0.5);
        assertEquals(0.05, a.radiusContaining(3).orElseThrow(), RADIUS / 200);
        a.add(b, -0.5);
        assertTrue(a.radiusContaining(2.5).isEmpty());
    }

    @Test
    void everyPlaceLiesInItsCell() {
        Grid grid = GRIDS.plane();
        SplittableRandom random = new SplittableRandom(92_003);
        for (int i = 0; i < 2000; i++) {
            double x = random.nextDouble(-0.16, 0.16);
            double y = random.nextDouble(-0.16, 0.16);
            int cell = grid.cellAt(x, y);
            double edge = grid.columns() * grid.cellWidth() / 2;
            assertEquals(Math.abs(x) <= edge && Math.abs(y) <= edge, cell >= 0);
            if (cell >= 0) {
                assertEquals(x, grid.first(cell % grid.columns()), grid.cellWidth() / 2 + 1e-12);
                assertEquals(y, grid.second(cell / grid.columns()), grid.cellHeight() / 2 + 1e-12);
            }
        }
    }

    @Test
    void gridsCoverTheirFaces() {
        Grid plane = Grid.ofPlane(RADIUS, 0.01);
        assertTrue(plane.firstMin() <= -1.5 * RADIUS + 1e-12 && plane.columns() == plane.rows());
        assertTrue(plane.cellWidth() <= 0.01 / 4 + 1e-12 && plane.cellWidth() <= RADIUS / 40 + 1e-12);
        Grid wall = Grid.ofWall(RADIUS, 0.11);
        assertEquals(2 * Math.PI * RADIUS, wall.columns() * wall.cellWidth(), 1e-12);
        assertEquals(0.11, wall.rows() * wall.cellHeight(), 1e-12);
        Grid lid = Grid.ofLid(RADIUS);
        assertEquals(2 * RADIUS, lid.columns() * lid.cellWidth(), 1e-12);
    }

    /** Wall light: bands from the underside up, columns from +x over +y. */
    @Test
    void wallLightIsUnrolledFromPlusXOverPlusY() {
        TargetGrids grids = TargetGrids.of(new Pan(0.2, 0.11, new Finish("black", 0.9)), 0.01);
        Tally tally = new Tally(grids);
        tally.addWallHit(0, RADIUS, 0.109, 0.5, 4);
        tally.addWallHit(1e-9, -RADIUS, 0.001, 1, 8);
        Grid wall = grids.wall();
        List<Integer> lit = new ArrayList<>();
        IntStream.range(0, wall.cells()).filter(c -> tally.wallMap[c] > 0).forEach(lit::add);
        assertEquals(2, lit.size());
        assertEquals(8, tally.wallMap[lit.get(0)]);
        assertEquals(0, lit.get(0) / wall.columns());
        assertEquals(0.75 * wall.columns(), lit.get(0) % wall.columns(), 1);
        assertEquals(wall.rows() - 1, lit.get(1) / wall.columns());
        assertEquals(0.25 * wall.columns(), lit.get(1) % wall.columns(), 1);
        assertEquals(12, tally.wall);
        double slanting = GrazingAbsorptance.relativeAbsorptance(0.5);
        assertEquals(4 * slanting, tally.wallAbsorbableByRow[wall.rows() - 1], 1e-12);
        assertEquals(8, tally.wallAbsorbableByRow[0], 1e-12);
    }

    /** A wall with its light in the lowest fifth. */
    @Test
    void wallShareBelowAHeight() {
        CaughtByFace faces = new CaughtByFace(0, 1, new double[] {6, 0, 2, 0, 0}, new double[] {3, 0, 2, 0, 0}, 0, 1);
        assertEquals(0.375, faces.wallShareBelow(0.1), 1e-12);
        assertEquals(0.75, faces.wallShareBelow(0.3), 1e-12);
        assertEquals(0.875, faces.wallShareBelow(0.5), 1e-12);
        assertEquals(1, faces.wallShareBelow(7), 1e-12);
        assertEquals(0.5, faces.wallAbsorptanceBelow(0.1), 1e-12);
        assertEquals(4.0 / 7, faces.wallAbsorptanceBelow(0.5), 1e-12);
        assertEquals(1, faces.wallAbsorptanceAbove(0.3), 1e-12);
        assertEquals(1, faces.wallAbsorptanceAbove(0.7), 1e-12);
        assertEquals(0, new CaughtByFace(0, 1, new double[3], new double[3], 0, 1).wallShareBelow(0.5));
    }

    /** Moments of a Gaussian with axes 3 and 1 turned by 0.4 rad: rotation of a covariance, textbook. */
    @Test
    void ellipseOfTurnedMoments() {
        for (double turn : new double[] {0.4, -1.2, 1.5, Math.PI / 2, 0}) {
            double c = Math.cos(turn);
            double s = Math.sin(turn);
            SpotEllipse e = SpotEllipse.ofMoments(9 * c * c + s * s, 8 * c * s, 9 * s * s + c * c);
            assertEquals(3, e.longSigma(), 1e-12);
            assertEquals(1, e.shortSigma(), 1e-12);
            assertEquals(0, Math.sin(turn - e.angleRadians()), 1e-12);
            assertTrue(e.angleRadians() > -Math.PI / 2 - 1e-12 && e.angleRadians() <= Math.PI / 2);
        }
        SpotEllipse line = SpotEllipse.ofMoments(4, 0, -1e-18);
        assertEquals(0, line.shortSigma());
        assertFalse(Double.isNaN(line.angleRadians()));
    }
}
