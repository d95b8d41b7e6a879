package simmerpoint.dish.built;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import simmerpoint.dish.Cut;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.built.BuildErrors.Cause;
import simmerpoint.dish.built.BuildErrors.Part;
import simmerpoint.dish.cut.BentStrips;
import simmerpoint.dish.cut.FlatRings;
import simmerpoint.dish.cut.RingSpacing;
import simmerpoint.dish.cut.Smooth;
import simmerpoint.dish.mirror.Mirror;

/** What tolerances do to a panel, against errors laid on its four corners and added up place by place. */
class BuildErrorsTest {
    private static final int STEPS = 400;
    private static final double FOCAL = 0.7;
    private static final int SECTORS = 12;

    /** One ring from 0.2 to 0.6 m from the axis. */
    private static DishPlan oneRing(Cut cut) {
        return new DishPlan(1.2, FOCAL, 0.4, 0.002, cut);
    }

    private static final Cut RING = new FlatRings(SECTORS, 1, RingSpacing.EQUAL_WIDTH);
    private static final double INNER = 0.2;
    private static final double OUTER = 0.6;
    private static final double RISE = (OUTER * OUTER - INNER * INNER) / (4 * FOCAL);
    private static final double LENGTH2 = (OUTER - INNER) * (OUTER - INNER) + RISE * RISE;
    private static final double CHORD = 2 * Math.sin(Math.PI / SECTORS);
    private static final double WIDTH2 = CHORD * CHORD * (INNER * INNER + OUTER * OUTER) / 2;

    private static BuildErrors errors(double ribCut, double ribSet, double edge, double sag, Cut cut) {
        return BuildErrors.of(new Workmanship(ribCut, ribSet, edge, sag, 0, 1, 0), oneRing(cut));
    }

    /**
     * Four corners off by one each in turn, the sheet between them z = sum of corner × its share: mean slope and what varies
     * about it, added up over a grid. Independent corners add in squares.
     */
    @Test
    void cornersOffTheCurveTiltAndTwistAPanel() {
        double s = 0.5 * 2e-3;
        double length = Math.sqrt(LENGTH2);
        double width = Math.sqrt(WIDTH2);
        double[] squares = new double[4];
        for (int corner = 0; corner < 4; corner++) {
            double signX = corner % 2 == 0 ? -1 : 1;
            double signY = corner < 2 ? -1 : 1;
            for (int i = 0; i < STEPS; i++) {
                double t = (i + 0.5) / STEPS - 0.5;
                double along = signX * (0.5 + signY * t) * s / length;
                double across = signY * (0.5 + signX * t) * s / width;
                double meanAlong = signX * 0.5 * s / length;
                double meanAcross = signY * 0.5 * s / width;
                squares[0] += meanAlong * meanAlong / STEPS;
                squares[1] += meanAcross * meanAcross / STEPS;
                squares[2] += (along - meanAlong) * (along - meanAlong) / STEPS;
                squares[3] += (across - meanAcross) * (across - meanAcross) / STEPS;
            }
        }
        Part part = errors(2e-3, 0, 0, 0, RING).parts().get(Cause.RIB_CUT);
        assertEquals(Math.sqrt(squares[0]), part.tiltAlong(), 1e-5 * part.tiltAlong());
        assertEquals(Math.sqrt(squares[1]), part.tiltAcross(), 1e-5 * part.tiltAcross());
        assertEquals(Math.sqrt(squares[2]), part.slopeAlong(), 1e-5 * part.slopeAlong());
        assertEquals(Math.sqrt(squares[3]), part.slopeAcross(), 1e-5 * part.slopeAcross());
        assertEquals(0, part.gap(), 0);
        double sum = squares[0] + squares[1] + squares[2] + squares[3];
        assertEquals(Math.sqrt(sum / 2), part.perAxis(), 1e-5 * part.perAxis());
    }

    /** The slope along the ribs goes evenly from the one rib's angle to the other's; across, they stand apart by both. */
    @Test
    void ribsSetWrongTiltAPanel() {
        double a = 0.5 * 0.01;
        double varies = 0;
        for (int i = 0; i < STEPS; i++) {
            double t = (i + 0.5) / STEPS;
            varies += ((0.5 - t) * (0.5 - t) + (t - 0.5) * (t - 0.5)) * a * a / STEPS;
        }
        double middle = 0.4;
        double up = (middle * middle - INNER * INNER) / (4 * FOCAL);
        double reach2 = (middle - INNER) * (middle - INNER) + up * up;
        Part part = errors(0, 0.01, 0, 0, RING).parts().get(Cause.RIB_SET);
        assertEquals(a / Math.sqrt(2), part.tiltAlong(), 1e-9);
        assertEquals(Math.sqrt(2 * reach2 / WIDTH2) * a, part.tiltAcross(), 1e-9);
        assertEquals(Math.sqrt(varies), part.slopeAlong(), 1e-7);
        assertEquals(0, part.slopeAcross(), 0);
    }

    /** z = h(1 − 4t²) across a panel of width w has slopes −8ht/w: their root mean square, added up over a grid. */
    @Test
    void sheetThatSagsVariesAcrossAPanel() {
        double h = 0.5 * 4e-3;
        double rimWidth2 = CHORD * CHORD * OUTER * OUTER;
        double here = h * WIDTH2 / rimWidth2;
        double sum = 0;
        for (int i = 0; i < STEPS; i++) {
            double t = (i + 0.5) / STEPS - 0.5;
            sum += Math.pow(8 * here * t, 2) / WIDTH2 / STEPS;
        }
        Part part = errors(0, 0, 0, 4e-3, RING).parts().get(Cause.SAG);
        assertEquals(Math.sqrt(sum), part.slopeAcross(), 1e-5 * part.slopeAcross());
        assertEquals(0, part.tiltAlong(), 0);
        assertEquals(0, part.tiltAcross(), 0);
        assertEquals(0, part.slopeAlong(), 0);
    }

    /** Mean of what two neighbours are short together, added up over a normal law; nothing without seams. */
    @Test
    void edgesCutShortLeaveSlits() {
        double e = 0.5 * 3e-3;
        double mean = 0;
        double step = 0.001;
        for (double z = step / 2; z < 8; z += step) {
            mean += Math.sqrt(2) * e * z * Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI) * step;
        }
        BuildErrors errors = errors(0, 0, 3e-3, 0, RING);
        assertEquals(mean, errors.all().gap(), 1e-8);
        BuiltDish built = errors.build(oneRing(RING), Mirror.plain(0.8, 0.004));
        assertEquals(0.002 + mean, built.layout().gapMetres(), 1e-8);
        assertTrue(errors(0, 0, 3e-3, 0, new Smooth()).parts().isEmpty());
    }

    /** A cap of a paraboloid b high and d wide has slope 8bρ/d² at ρ: its mean square over the disc, half of it per axis. */
    @Test
    void bubblesLeanTheFilm() {
        double b = 1e-3;
        double d = 0.03;
        double sum = 0;
        for (int i = 0; i < STEPS; i++) {
            double rho = (i + 0.5) / STEPS * d / 2;
            sum += Math.pow(8 * b * rho / (d * d), 2) * 2 * rho / (d * d / 4) * (d / 2 / STEPS);
        }
        Part part = BuildErrors.of(new Workmanship(0, 0, 0, 0, b, d, 0.25), oneRing(RING))
                .parts()
                .get(Cause.BUBBLES);
        assertEquals(Math.sqrt(0.25 * sum / 2), part.slopeAlong(), 1e-5 * part.slopeAlong());
        assertEquals(part.slopeAlong(), part.slopeAcross(), 0);
    }

    @Test
    void causesAddInSquaresAndGapsAsTheyAre() {
        BuildErrors both = errors(2e-3, 0.01, 3e-3, 4e-3, RING);
        assertEquals(
                Set.of(Cause.RIB_CUT, Cause.RIB_SET, Cause.SAG, Cause.PANEL_EDGE),
                both.parts().keySet());
        Part cut = both.parts().get(Cause.RIB_CUT);
        Part set = both.parts().get(Cause.RIB_SET);
        Part sag = both.parts().get(Cause.SAG);
        Part all = both.all();
        assertEquals(Math.hypot(cut.tiltAlong(), set.tiltAlong()), all.tiltAlong(), 1e-12);
        assertEquals(Math.hypot(cut.tiltAcross(), set.tiltAcross()), all.tiltAcross(), 1e-12);
        assertEquals(Math.hypot(cut.slopeAlong(), set.slopeAlong()), all.slopeAlong(), 1e-12);
        assertEquals(Math.hypot(cut.slopeAcross(), sag.slopeAcross()), all.slopeAcross(), 1e-12);
        double tilt = Math.sqrt((Math.pow(all.tiltAlong(), 2) + Math.pow(all.tiltAcross(), 2)) / 2);
        double slope = Math.sqrt((Math.pow(all.slopeAlong(), 2) + Math.pow(all.slopeAcross(), 2)) / 2);
        assertEquals(tilt, both.tilt(), 1e-12);
        assertEquals(slope, both.slope(), 1e-12);
        Mirror mirror = both.build(oneRing(RING), Mirror.plain(0.8, 0.004).withPanelTilt(0.006))
                .mirror();
        assertEquals(Math.sqrt(0.004 * 0.004 + slope * slope), mirror.slopeErrorRadians(), 1e-12);
        assertEquals(Math.sqrt(0.006 * 0.006 + tilt * tilt), mirror.panelTiltRadians(), 1e-12);
        assertEquals(
                Set.of(Cause.RIB_CUT, Cause.SAG, Cause.PANEL_EDGE),
                both.without(Cause.RIB_SET).parts().keySet());
    }

    /** A strip is many short lengths: its watts' worth of tilt along the rib is that of 10 cm, not of the whole strip. */
    @Test
    void aStripCountsInLengthsOfAHand() {
        double s = 0.5 * 2e-3;
        double sum = 0;
        double area = 0;
        for (double r = INNER; r < OUTER - 1e-9; r += 0.1) {
            double rise = ((r + 0.1) * (r + 0.1) - r * r) / (4 * FOCAL);
            double weight = (r + 0.1) * (r + 0.1) - r * r;
            sum += weight * s * s / (0.01 + rise * rise);
            area += weight;
        }
        Part part = errors(2e-3, 0, 0, 0, new BentStrips(SECTORS)).parts().get(Cause.RIB_CUT);
        assertEquals(Math.sqrt(sum / area), part.tiltAlong(), 1e-6);
    }

    @Test
    void anExactDishIsThePlan() {
        DishPlan plan = oneRing(RING);
        Mirror mirror = Mirror.plain(0.8, 0.004);
        assertSame(plan, BuildErrors.NONE.build(plan, mirror).layout());
        assertSame(mirror, BuildErrors.NONE.build(plan, mirror).mirror());
        assertTrue(errors(0, 0, 0, 0, RING).parts().isEmpty());
    }

    @Test
    void tolerancesBelowZeroAreRefused() {
        for (int bad = 0; bad < 5; bad++) {
            double[] sizes = {0, 0, 0, 0, 0};
            sizes[bad] = -1e-9;
            assertThrows(
                    IllegalArgumentException.class,
                    () -> new Workmanship(sizes[0], sizes[1], sizes[2], sizes[3], sizes[4], 1, 0));
        }
        assertThrows(IllegalArgumentException.class, () -> new Workmanship(0, 0, 0, 0, 0, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new Workmanship(0, 0, 0, 0, 0, 1, -1e-9));
        assertThrows(IllegalArgumentException.class, () -> new Workmanship(0, 0, 0, 0, 0, 1, 1 + 1e-9));
        assertEquals(1, new Workmanship(0, 0, 0, 0, 0, 1, 1).bubbledShare(), 0);
    }
}
