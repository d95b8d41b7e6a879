package simmerpoint.setup;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.cut.Smooth;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Finish;
import simmerpoint.pan.Pan;
import simmerpoint.sun.Sunlight;
import simmerpoint.sun.UniformDiscSun;

/**
 * The set-up seen from the ground: east, north, up, azimuth from north over east. What is written here is how things
 * stand on the ground; turning all of it about the vertical must change nothing in the frame of the well-aimed dish.
 */
class SetupProperties {
    private static final Pan PAN = new Pan(0.24, 0.11, new Finish("black", 0.9));
    private static final Vec UP = new Vec(0, 0, 1);

    private static Setup setup(double elevation, Aim aim, Stand stand) {
        return Setup.of(
                new DishPlan(1.2, 0.8, 0, 0, new Smooth()),
                new Sunlight(elevation, 850, UniformDiscSun.MEAN_SUN),
                aim,
                PAN,
                stand);
    }

    /** Towards the sun, on the ground. */
    private static Vec sun(double elevation, double azimuth) {
        double level = Math.cos(elevation);
        return new Vec(level * Math.sin(azimuth), level * Math.cos(azimuth), Math.sin(elevation));
    }

    /** A ground vector's parts along the axes of the well-aimed dish: z to the sun, y level, x = y × z upwards. */
    private static Vec inDish(Vec ground, Vec sun) {
        Vec y = Direction.of(sun.cross(UP)).vec();
        Vec x = y.cross(sun);
        return new Vec(ground.dot(x), ground.dot(y), ground.dot(sun));
    }

    private static void same(Vec wanted, Vec got) {
        assertEquals(0, wanted.minus(got).length(), 1e-12, () -> "wanted " + wanted + ", got " + got);
    }

    @Property(seed = "71", edgeCases = EdgeCasesMode.NONE)
    void movesAreThoseSeenFromTheGround(
            @ForAll @DoubleRange(min = 0.05, max = 1.55) double elevation,
            @ForAll @DoubleRange(min = 0, max = 6.3) double azimuth,
            @ForAll @DoubleRange(min = -0.3, max = 0.3) double pullBack,
            @ForAll @DoubleRange(min = -0.3, max = 0.3) double slide,
            @ForAll @DoubleRange(min = -0.3, max = 0.3) double raise,
            @ForAll @DoubleRange(min = -0.3, max = 0.3) double side) {
        Vec sun = sun(elevation, azimuth);
        Vec levelToSun = new Vec(Math.sin(azimuth), Math.cos(azimuth), 0);
        Vec sideways = levelToSun.cross(UP);
        // The pan stands still while the dish slides away from the sun: seen from the dish it goes towards the sun.
        Vec panFromFocus = sun.times(pullBack)
                .plus(levelToSun.times(slide))
                .plus(UP.times(raise))
                .plus(sideways.times(side));
        Setup setup = setup(elevation, Aim.PERFECT, new Stand(pullBack, slide, raise, side));
        same(new Vec(0, 0, 0.8).plus(inDish(panFromFocus, sun)), setup.target().origin());
    }

    @Property(seed = "72", edgeCases = EdgeCasesMode.NONE)
    void thePanStaysLevelWhateverTheDishDoes(
            @ForAll @DoubleRange(min = 0.05, max = 1.55) double elevation,
            @ForAll @DoubleRange(min = 0, max = 6.3) double azimuth,
            @ForAll @DoubleRange(min = -0.2, max = 0.2) double turnUp,
            @ForAll @DoubleRange(min = -0.2, max = 0.2) double turnSide,
            @ForAll Aim.PanCarrier carrier) {
        Aim aim = new Aim(turnUp, turnSide, 0, 0, 0, 0.1, carrier);
        Setup setup = setup(elevation, aim, new Stand(0.1, 0.05, -0.03, 0.02));
        Vec sun = sun(elevation, azimuth);
        same(inDish(UP, sun), setup.target().rotation().apply(Direction.Z).vec());
        Vec levelFromSun = new Vec(-Math.sin(azimuth), -Math.cos(azimuth), 0);
        same(
                inDish(levelFromSun, sun),
                setup.target().rotation().apply(Direction.X).vec());
    }

    /** A slide keeps the focus in the pan's level plane. */
    @Property(seed = "73")
    void slideKeepsTheFocusInThePansPlane(
            @ForAll @DoubleRange(min = 0.05, max = 1.55) double elevation,
            @ForAll @DoubleRange(min = -0.5, max = 0.5) double slide) {
        Vec focus = setup(elevation, Aim.PERFECT, new Stand(0, slide, 0, 0))
                .target()
                .fromParent(new Vec(0, 0, 0.8));
        assertEquals(0, focus.z(), 1e-12);
        assertEquals(Math.abs(slide), Math.hypot(focus.x(), focus.y()), 1e-12);
    }

    /** A turn is about the mount, takes the axis where it says, and takes a carried pan's middle along. */
    @Property(seed = "74")
    void aTurnGoesRoundTheMount(
            @ForAll @DoubleRange(min = -0.3, max = 0.3) double up,
            @ForAll @DoubleRange(min = -0.3, max = 0.3) double side,
            @ForAll @DoubleRange(min = -0.2, max = 0.5) double mount) {
        Stand stand = new Stand(0.1, 0, 0, 0.04);
        Setup alone = setup(0.7, new Aim(up, side, 0, 0, 0, mount, Aim.PanCarrier.STAND), stand);
        Setup carried = setup(0.7, new Aim(up, side, 0, 0, 0, mount, Aim.PanCarrier.DISH), stand);
        Setup straight = setup(0.7, Aim.PERFECT, stand);
        Vec pivot = new Vec(0, 0, -mount);
        same(pivot, alone.dish().toParent(pivot));
        same(
                Direction.tiltedFromZ(up, side).vec(),
                alone.dish().rotation().apply(Direction.Z).vec());
        same(straight.target().origin(), alone.target().origin());
        same(alone.dish().toParent(straight.target().origin()), carried.target().origin());
        same(Direction.Z.vec(), alone.sun().vec());
        same(Direction.tiltedFromZ(-up, -side).vec(), alone.sunInDish().vec());
    }

    /** A drift moves the sun and nothing else. */
    @Property(seed = "75")
    void aDriftMovesOnlyTheSun(
            @ForAll @DoubleRange(min = -0.3, max = 0.3) double up,
            @ForAll @DoubleRange(min = -0.3, max = 0.3) double side) {
        Setup straight = setup(0.7, Aim.PERFECT, Stand.AT_FOCUS);
        Setup drifted = setup(0.7, new Aim(0, 0, up, side, 0, 0.2, Aim.PanCarrier.DISH), Stand.AT_FOCUS);
        same(Direction.tiltedFromZ(up, side).vec(), drifted.sun().vec());
        same(straight.target().origin(), drifted.target().origin());
        same(Vec.ZERO, drifted.dish().origin());
        same(drifted.sun().vec(), drifted.sunInDish().vec());
        Vec there = drifted.target().rotation().apply(drifted.sunInTarget()).vec();
        same(drifted.sun().vec(), there);
    }
}
