package simmerpoint.truth;

import simmerpoint.dish.DishPlan;
import simmerpoint.dish.cut.BentStrips;
import simmerpoint.dish.cut.FlatRings;
import simmerpoint.dish.cut.FromFile;
import simmerpoint.dish.cut.RingSpacing;
import simmerpoint.dish.cut.Smooth;
import simmerpoint.dish.mesh.Mesh;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.pan.Finish;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Plane;
import simmerpoint.pan.Target;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Stand;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.sun.SunShape;
import simmerpoint.sun.Sunlight;
import simmerpoint.sun.UniformDiscSun;

/**
 * A scenario under test, changed one thing at a time; every method returns a changed copy. It starts with a perfect
 * mirror, 1000 W/m² from a uniform disc of 4.65 mrad overhead, perfect aim, and the target's middle at the focus.
 */
record Scene(
        DishPlan dish,
        Mirror mirror,
        double elevation,
        double beam,
        SunShape shape,
        Aim aim,
        Target target,
        Stand stand) {
    /** Half-angle of the sun in every check that does not say otherwise, rad. */
    static final double SUN = 4.65e-3;

    /** A sun so small that its light is parallel for every purpose here. */
    static final SunShape POINT = new UniformDiscSun(1e-7);

    static Scene of(DishPlan dish, Target target) {
        SunShape sun = new UniformDiscSun(SUN);
        return new Scene(dish, Mirror.plain(1, 0), Math.PI / 2, 1000, sun, Aim.PERFECT, target, Stand.AT_FOCUS);
    }

    static DishPlan smooth(double diameter, double focal, double hub) {
        return new DishPlan(diameter, focal, hub, 0, new Smooth());
    }

    static DishPlan rings(double diameter, double focal, double hub, int sectors, int rings) {
        return new DishPlan(diameter, focal, hub, 0, new FlatRings(sectors, rings, RingSpacing.EQUAL_WIDTH));
    }

    static DishPlan strips(double diameter, double focal, double hub, int sectors) {
        return new DishPlan(diameter, focal, hub, 0, new BentStrips(sectors));
    }

    static DishPlan mesh(double diameter, double focal, Mesh mesh) {
        return new DishPlan(diameter, focal, 0, 0, new FromFile(mesh));
    }

    /** A bare disc square to the axis. */
    static Plane disc(double radius) {
        return new Plane(2 * radius, 0);
    }

    static Pan pan(double radius, double height) {
        return new Pan(2 * radius, height, new Finish("black", 1));
    }

    Scene with(Mirror m) {
        return new Scene(dish, m, elevation, beam, shape, aim, target, stand);
    }

    Scene with(SunShape s) {
        return new Scene(dish, mirror, elevation, beam, s, aim, target, stand);
    }

    Scene with(Aim a) {
        return new Scene(dish, mirror, elevation, beam, shape, a, target, stand);
    }

    Scene with(Target t) {
        return new Scene(dish, mirror, elevation, beam, shape, aim, t, stand);
    }

    Scene with(Stand s) {
        return new Scene(dish, mirror, elevation, beam, shape, aim, target, s);
    }

    Scene with(DishPlan d) {
        return new Scene(d, mirror, elevation, beam, shape, aim, target, stand);
    }

    Scene elevation(double radians) {
        return new Scene(dish, mirror, radians, beam, shape, aim, target, stand);
    }

    Scene beam(double wattsPerSquareMetre) {
        return new Scene(dish, mirror, elevation, wattsPerSquareMetre, shape, aim, target, stand);
    }

    Scene pullBack(double metres) {
        return with(new Stand(metres, stand.slideMetres(), stand.raiseMetres(), stand.sideMetres()));
    }

    Scene drift(double up, double side) {
        return with(new Aim(
                aim.turnUpRadians(),
                aim.turnSideRadians(),
                up,
                side,
                aim.jitterRadians(),
                aim.mountMetres(),
                aim.panCarriedBy()));
    }

    Scene turn(double up, double side, double mount) {
        return with(new Aim(
                up,
                side,
                aim.driftUpRadians(),
                aim.driftSideRadians(),
                aim.jitterRadians(),
                mount,
                aim.panCarriedBy()));
    }

    Scenario scenario() {
        return new Scenario("", dish, mirror, new Sunlight(elevation, beam, shape), aim, target, stand);
    }

    /** Traces it with two threads. */
    TraceResult trace(long rays, long seed) {
        return trace(TraceOptions.defaults().withRays(rays).withSeed(seed).withThreads(2));
    }

    TraceResult trace(TraceOptions options) {
        return TraceStudy.run(scenario(), options, Progress.NONE);
    }
}
