package simmerpoint.dish.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import simmerpoint.dish.Cut;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.SurfaceSamples;
import simmerpoint.dish.cut.BentStrips;
import simmerpoint.dish.cut.FlatRings;
import simmerpoint.dish.cut.RingSpacing;
import simmerpoint.dish.cut.Smooth;
import simmerpoint.geometry.Direction;

/** Shape errors against surfaces and beams that are known without them. */
class ShapeClosedFormsTest {
    private static final double RIM = 0.6;
    private static final double FOCAL = 0.65;
    private static final int SECTORS = 12;
    private static final double UP = Math.PI / 2;
    private static final int POINTS = 3000;

    private static DishPlan plan(double focal, Cut cut) {
        return new DishPlan(2 * RIM, focal, 0.06, 0, cut);
    }

    private static MirrorSurface deformed(Cut cut, ShapeError error, double metres) {
        DishPlan plan = plan(FOCAL, cut);
        return ShapeErrors.NONE.with(error, metres).deform(plan, plan.surface(Direction.Z), UP);
    }

    private static void assertSame(MirrorSurface expected, MirrorSurface actual) {
        MirrorPoints a = SurfaceSamples.places(expected, POINTS, 6);
        MirrorPoints b = SurfaceSamples.places(actual, POINTS, 6);
        for (int i = 0; i < POINTS; i++) {
            assertEquals(a.panel[i], b.panel[i]);
            if (a.panel[i] >= 0) {
                assertEquals(a.x[i], b.x[i], 1e-15);
                assertEquals(a.y[i], b.y[i], 1e-15);
                assertEquals(a.z[i], b.z[i], 1e-13);
                assertEquals(a.nx[i], b.nx[i], 1e-12);
                assertEquals(a.ny[i], b.ny[i], 1e-12);
                assertEquals(a.nz[i], b.nz[i], 1e-12);
                assertEquals(a.area[i], b.area[i], 1e-12);
                assertEquals(a.z[i], actual.heightAt(b.x[i], b.y[i]), 1e-12);
            }
        }
    }

    /** A dish shallower by h is the dish of the focal length f' with R²/4f' = R²/4f − h, on every cut. */
    @ParameterizedTest
    @ValueSource(doubles = {0.005, -0.012})
    void springbackIsAnotherFocalLength(double metres) {
        double other = RIM * RIM / 4 / (RIM * RIM / 4 / FOCAL - metres);
        for (Cut cut :
                new Cut[] {new Smooth(), new BentStrips(SECTORS), new FlatRings(SECTORS, 5, RingSpacing.EQUAL_WIDTH)}) {
            assertSame(plan(other, cut).surface(Direction.Z), deformed(cut, ShapeError.SPRINGBACK, metres));
        }
    }

    /**
     * Strips lie before the paraboloid by (x²·tan²β − y²)/4f; sheet that hangs back by R²·sin²β/4f midway at the rim, as a parabola,
     * lies on it.
     */
    @Test
    void stripsThatHangBackByTheirChordAreTheParaboloid() {
        double chord = RIM * RIM * Math.pow(Math.sin(Math.PI / SECTORS), 2) / (4 * FOCAL);
        MirrorPoints p =
                SurfaceSamples.places(deformed(new BentStrips(SECTORS), ShapeError.SHEET_BULGE, -chord), POINTS, 2);
        for (int i = 0; i < POINTS; i++) {
            if (p.panel[i] >= 0) {
                assertEquals((p.x[i] * p.x[i] + p.y[i] * p.y[i]) / (4 * FOCAL), p.z[i], 1e-14);
                assertEquals(-p.x[i] / (2 * FOCAL) * p.nz[i], p.nx[i], 1e-13);
                assertEquals(-p.y[i] / (2 * FOCAL) * p.nz[i], p.ny[i], 1e-13);
            }
        }
    }

    /**
     * Sheet of 30 cm between ribs at the rim, free to turn on them: middle mm, slope at the ribs and root mean square, mrad, of sheet 0.5
     * mm thick of aluminium and steel and 3 mm of hardboard. Derived from the beam's closed form 5qL⁴/384EI, qL³/24EI, √(17/35)
     * with moduli 70, 205, 4 GPa and densities 2700, 7850, 950 kg/m³.
     */
    @ParameterizedTest
    @CsvSource({"1.9149, 20.426, 14.235", "1.9011, 20.278, 14.133", "0.3275, 3.494, 2.435"})
    void sheetHangsAsABeam(double middle, double atRib, double mean) {
        double rim = 0.15 / Math.sin(Math.PI / SECTORS);
        double bisector = rim * Math.cos(Math.PI / SECTORS);
        DishPlan plan = new DishPlan(2 * rim, FOCAL, 0, 0, new BentStrips(SECTORS));
        Deformation sag =
                ShapeErrors.NONE.with(ShapeError.SHEET_SAG, middle * 1e-3).deformation(plan, UP);
        Sectors sectors = new Sectors(SECTORS);
        double squares = 0;
        int steps = 2000;
        for (int i = 0; i < steps; i++) {
            double across = 0.3 * ((i + 0.5) / steps - 0.5);
            squares += Math.pow(acrossSlope(sag, sectors, bisector, across), 2) / steps;
        }
        assertEquals(
                -middle * 1e-3,
                sag.at(bisector * sectors.cos[0], bisector * sectors.sin[0]).height(),
                1e-12);
        assertEquals(atRib * 1e-3, acrossSlope(sag, sectors, bisector, 0.15 - 1e-9), 1e-6);
        assertEquals(mean * 1e-3, Math.sqrt(squares), 1e-6);
    }

    private static double acrossSlope(Deformation sag, Sectors sectors, double along, double across) {
        Displacement at = sag.at(
                along * sectors.cos[0] - across * sectors.sin[0], along * sectors.sin[0] + across * sectors.cos[0]);
        return at.slopeY() * sectors.cos[0] - at.slopeX() * sectors.sin[0];
    }

    /** Sag of one strip goes as the fourth power of its width: 1/16 halfway. */
    @Test
    void sagGoesAsTheFourthPowerOfTheWidth() {
        Deformation sag = ShapeErrors.NONE
                .with(ShapeError.SHEET_SAG, 0.002)
                .deformation(plan(FOCAL, new BentStrips(SECTORS)), UP);
        double x = RIM * Math.cos(Math.PI / SECTORS);
        double angle = Math.PI / SECTORS;
        double rim = sag.at(x * Math.cos(angle), x * Math.sin(angle)).height();
        double half = sag.at(x / 2 * Math.cos(angle), x / 2 * Math.sin(angle)).height();
        assertEquals(rim / 16, half, 1e-15);
    }

    /** A sheet's own normal against the vertical, by vectors: what bends it is the part of its weight along the normal. */
    @ParameterizedTest
    @ValueSource(doubles = {20, 45, 70})
    void sheetSagsByTheWeightSquareToIt(double degrees) {
        double elevation = Math.toRadians(degrees);
        ShapeErrors shape = ShapeErrors.NONE.with(ShapeError.SHEET_SAG, 0.002);
        DishPlan plan = plan(FOCAL, new BentStrips(SECTORS));
        Deformation flat = shape.deformation(plan, UP);
        Deformation aimed = shape.deformation(plan, elevation);
        for (int k = 0; k < SECTORS; k++) {
            double angle = (2 * k + 1) * Math.PI / SECTORS;
            double x = 0.5 * Math.cos(angle);
            double y = 0.5 * Math.sin(angle);
            double steep = Math.hypot(x, y) / (2 * FOCAL);
            double length = Math.hypot(1, steep);
            double[] normal = {-x / (2 * FOCAL) / length, 1 / length};
            double press = Math.cos(elevation) * normal[0] + Math.sin(elevation) * normal[1];
            // Weight on the sheet's own area moves it along its normal; along the axis that is 1/cos of its slope as
            // far.
            double alongAxis = press * length;
            assertEquals(flat.at(x, y).height() * alongAxis, aimed.at(x, y).height(), 1e-15);
        }
    }

    /** Two corners up, two down; strings across the rim between them cross twice the error apart. */
    @Test
    void twistIsHalfTheGapBetweenCrossedStrings() {
        Deformation twist = ShapeErrors.NONE.with(ShapeError.TWIST, 0.004).deformation(plan(FOCAL, new Smooth()), UP);
        double c = RIM / Math.sqrt(2);
        double first = (twist.at(c, c).height() + twist.at(-c, -c).height()) / 2;
        double second = (twist.at(c, -c).height() + twist.at(-c, c).height()) / 2;
        assertEquals(0.008, first - second, 1e-15);
        assertEquals(0, twist.at(RIM, 0).height(), 0);
    }
}
