package simmerpoint.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.cut.Smooth;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Finish;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Plane;
import simmerpoint.sun.Sunlight;
import simmerpoint.sun.UniformDiscSun;

/** The side view against {@link StandGeometry}, which is derived apart, and the target's outline against plain geometry. */
class SideViewTest {
    private static final Stand STAND = new Stand(0.11, -0.07, 0.05, 0.03);
    private static final Pan PAN = new Pan(0.24, 0.11, new Finish("black", 0.9));

    private static Setup setup(double elevation) {
        return Setup.of(
                new DishPlan(1.2, 0.8, 0, 0, new Smooth()),
                new Sunlight(elevation, 900, new UniformDiscSun(4.65e-3)),
                Aim.PERFECT,
                PAN,
                STAND);
    }

    @ParameterizedTest
    @ValueSource(doubles = {8, 25, 50, 77, 90})
    void panAndRimStandWhereTheStandGeometryHasThem(double degrees) {
        double a = Math.toRadians(degrees);
        SideView view = new SideView(a, new Vec(0, 0, -0.1), 0.7);
        StandGeometry g = StandGeometry.of(new DishPlan(1.2, 0.8, 0, 0, new Smooth()), a, 0.1, 0.7, STAND);
        SideView.Place pan = view.of(setup(a).target().origin());
        assertEquals(g.panHeightMetres(), pan.heightMetres(), 1e-12);
        assertEquals(g.panDistanceMetres(), pan.towardsSunMetres(), 1e-12);
        double lowest = Double.POSITIVE_INFINITY;
        for (int k = 0; k <= 6000; k++) {
            double r = k * 1e-4;
            lowest = Math.min(lowest, view.of(new Vec(-r, 0, r * r / 3.2)).heightMetres());
        }
        assertEquals(g.clearanceMetres(), lowest, 1e-7);
        assertEquals(new SideView.Place(0, 0.7), view.mount());
    }

    /** A level pan is seen as a rectangle of its diameter and height; the right-hand side is left out of the view. */
    @ParameterizedTest
    @ValueSource(doubles = {8, 50, 90})
    void aLevelPanIsARectangle(double degrees) {
        double a = Math.toRadians(degrees);
        SideView view = new SideView(a, Vec.ZERO, 0.6);
        TargetOutline outline = TargetOutline.of(PAN, setup(a));
        double bottom = view.of(setup(a).target().origin()).heightMetres();
        outline.underside().forEach(p -> assertEquals(bottom, view.of(p).heightMetres(), 1e-12));
        outline.lid().forEach(p -> assertEquals(bottom + 0.11, view.of(p).heightMetres(), 1e-12));
        double width = outline.underside().stream()
                        .mapToDouble(p -> view.of(p).towardsSunMetres())
                        .max()
                        .orElseThrow()
                - outline.underside().stream()
                        .mapToDouble(p -> view.of(p).towardsSunMetres())
                        .min()
                        .orElseThrow();
        assertEquals(0.24, width, 1e-12);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.3})
    void aBareDiscHasNoLid(double lean) {
        Plane plane = new Plane(0.2, lean);
        Setup setup = Setup.of(
                new DishPlan(1.2, 0.8, 0, 0, new Smooth()),
                new Sunlight(1, 900, new UniformDiscSun(4.65e-3)),
                Aim.PERFECT,
                plane,
                Stand.AT_FOCUS);
        TargetOutline outline = TargetOutline.of(plane, setup);
        assertTrue(outline.lid().isEmpty());
        outline.points()
                .forEach(p -> assertEquals(0.1, p.minus(new Vec(0, 0, 0.8)).length(), 1e-12));
    }
}
