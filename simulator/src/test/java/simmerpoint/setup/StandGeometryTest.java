package simmerpoint.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.cut.Smooth;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Plane;
import simmerpoint.sun.SunMotion;
import simmerpoint.sun.Sunlight;
import simmerpoint.sun.UniformDiscSun;

/** Closed forms are elementary geometry of the side view, derived here. */
class StandGeometryTest {
    private static final DishPlan DISH = new DishPlan(1.2, 0.8, 0, 0, new Smooth());

    private static StandGeometry at(double degrees, double behind, double height, Stand stand) {
        return StandGeometry.of(DISH, Math.toRadians(degrees), behind, height, stand);
    }

    @Test
    void aDishThatLooksUpHasItsPanStraightAboveTheMount() {
        StandGeometry g = at(90, 0.1, 0.6, Stand.AT_FOCUS);
        assertEquals(0.6 + 0.1 + 0.8, g.panHeightMetres(), 1e-12);
        assertEquals(0, g.distanceMetres(), 1e-12);
        assertEquals(0.7, g.clearanceMetres(), 1e-12);
    }

    /** At 30°: rim 0.6·cos 30° below the vertex, but 0.36/3.2·sin 30° in front of it; focus 0.9·sin 30° above the mount. */
    @Test
    void aDishThatLooksLow() {
        StandGeometry g = at(30, 0.1, 0.6, Stand.AT_FOCUS);
        assertEquals(0.6 + 0.9 * 0.5, g.panHeightMetres(), 1e-12);
        assertEquals(0.9 * Math.sqrt(3) / 2, g.panDistanceMetres(), 1e-12);
        assertEquals(0.6 + 0.05 - 0.6 * Math.sqrt(3) / 2 + 0.1125 * 0.5, g.clearanceMetres(), 1e-12);
        assertFalse(g.touchesGround());
        assertTrue(at(30, 0.1, 0.4, Stand.AT_FOCUS).touchesGround());
        assertEquals(0, at(30, 0.1, g.leastMountMetres(), Stand.AT_FOCUS).clearanceMetres(), 1e-12);
    }

    /** The side view and the well-aimed frame of {@link Setup} put the pan in one place. */
    @ParameterizedTest
    @ValueSource(doubles = {8, 25, 50, 77, 90})
    void agreesWithTheSetupThatIsTraced(double degrees) {
        Stand stand = new Stand(0.11, -0.07, 0.05, 0.03);
        double a = Math.toRadians(degrees);
        Setup setup = Setup.of(
                DISH, new Sunlight(a, 900, new UniformDiscSun(4.65e-3)), Aim.PERFECT, new Plane(0.2, 0), stand);
        Vec fromMount = setup.target().origin().plus(new Vec(0, 0, 0.1));
        Direction up = Direction.of(new Vec(Math.cos(a), 0, Math.sin(a)));
        Direction towardsSun = Direction.of(new Vec(-Math.sin(a), 0, Math.cos(a)));
        StandGeometry g = at(degrees, 0.1, 0.6, stand);
        assertEquals(0.6 + fromMount.dot(up.vec()), g.panHeightMetres(), 1e-12);
        assertEquals(fromMount.dot(towardsSun.vec()), g.panDistanceMetres(), 1e-12);
        assertEquals(fromMount.y(), g.panSideMetres(), 1e-12);
    }

    /** The lowest mirror point by looking at 10,001 of them. */
    @ParameterizedTest
    @ValueSource(doubles = {5, 40, 69, 70, 80, 89})
    void clearanceIsThatOfTheLowestMirrorPoint(double degrees) {
        double a = Math.toRadians(degrees);
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k <= 10_000; k++) {
            double r = 0.6 * k / 10_000;
            least = Math.min(least, -r * Math.cos(a) + r * r / 3.2 * Math.sin(a));
        }
        assertEquals(0.9 + least, at(degrees, 0, 0.9, Stand.AT_FOCUS).clearanceMetres(), 1e-8);
    }

    /** With the mount at the vertex of a nearly flat dish a leg meets the beam once it leans further than the mirror. */
    @Test
    void aLegStandsInTheBeamOnceItLeansMoreThanTheMirror() {
        DishPlan flat = new DishPlan(1.2, 1000, 0, 0, new Smooth());
        StandGeometry low = StandGeometry.of(flat, Math.toRadians(20), 0, 0.6, Stand.AT_FOCUS);
        assertEquals(20, Math.toDegrees(low.legLeanRadians()), 0.6);
        assertTrue(low.legInBeam());
        StandGeometry high = StandGeometry.of(flat, Math.toRadians(60), 0, 0.6, Stand.AT_FOCUS);
        assertEquals(StandGeometry.NO_LEG, high.legLeanRadians(), 0);
        assertFalse(high.legInBeam());
    }

    /** Sun at 4 mrad a minute, 37.5 mrad in 9.375 minutes; (0.8 + 0.1)·37.5 mrad = 33.75 mm. */
    @Test
    void theFocusWalksByFocalLengthAndMountTimesTheSunsAngle() {
        Aim onStand = new Aim(0, 0, 0, 0, 0, 0.1, Aim.PanCarrier.STAND);
        SunMotion motion = new SunMotion(2.4e-3, 3.2e-3);
        double a = Math.toRadians(30);
        FocusTravel walk = FocusTravel.of(DISH, onStand, 9.375, 0.2, a, motion);
        assertEquals(9.375, walk.minutes(), 1e-9);
        assertEquals(0.03375, walk.focusMetres(), 1e-12);
        double place = 1.1 * 37.5e-3;
        assertEquals(place * Math.hypot(0.6 * 0.5, 0.8), walk.levelMetres(), 1e-12);
        assertEquals(place * 0.6 * Math.sqrt(3) / 2, walk.riseMetres(), 1e-12);
        Aim onDish = new Aim(0, 0, 0, 0, 0, 0.1, Aim.PanCarrier.DISH);
        FocusTravel carried = FocusTravel.of(DISH, onDish, 9.375, 0.2, a, motion);
        assertEquals(9.375, carried.minutes(), 1e-9);
        assertEquals(0, carried.focusMetres() + carried.levelMetres() + carried.riseMetres(), 0);
    }

    @Test
    void refusesWhatCannotStand() {
        assertThrows(IllegalArgumentException.class, () -> at(0, 0, 0.6, Stand.AT_FOCUS));
        assertThrows(IllegalArgumentException.class, () -> at(Double.NaN, 0, 0.6, Stand.AT_FOCUS));
        assertThrows(IllegalArgumentException.class, () -> at(50, 0, Double.NaN, Stand.AT_FOCUS));
    }
}
