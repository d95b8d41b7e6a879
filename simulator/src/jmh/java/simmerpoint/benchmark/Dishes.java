package simmerpoint.benchmark;

import simmerpoint.dish.Cut;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.cut.FlatRings;
import simmerpoint.dish.cut.RingSpacing;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.pan.Finish;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Plane;
import simmerpoint.pan.Target;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Stand;
import simmerpoint.sun.Sunlight;
import simmerpoint.sun.UniformDiscSun;

/** Dishes to measure the speed on: 1.2 m across, focal length 0.8 m, flat panels, slope error 5 mrad. */
public enum Dishes {
    /** 144 panels over a bare disc, no flaw but the slope error. */
    DISC(24, 6, Mirror.plain(0.85, 5e-3), new Plane(0.12, 0), 50),
    /** The same, cut into 100,000 panels. */
    DISC_MANY_PANELS(1000, 100, Mirror.plain(0.85, 5e-3), new Plane(0.12, 0), 50),
    /** 144 panels over a level pan under a sun 50° high, no flaw but the slope error. */
    PAN(24, 6, Mirror.plain(0.85, 5e-3), new Pan(0.24, 0.11, new Finish("own figures", 0.9)), 50),
    /** 144 panels over a level pan at low sun, with beam spread and panels glued askew. */
    PAN_ALL_FLAWS(
            24,
            6,
            new Mirror("own figures", 0.85, 0.02, 5e-3, 1e-3, 0.05, 20e-3, 0.03, 4e-3),
            new Pan(0.24, 0.11, new Finish("own figures", 0.9)),
            25);

    private final Scenario scenario;

    Dishes(int sectors, int rings, Mirror mirror, Target target, double elevationDegrees) {
        Cut cut = new FlatRings(sectors, rings, RingSpacing.EQUAL_WIDTH);
        scenario = new Scenario(
                name(),
                new DishPlan(1.2, 0.8, 0.06, 0, cut),
                mirror,
                new Sunlight(Math.toRadians(elevationDegrees), 1000, new UniformDiscSun(4.65e-3)),
                Aim.PERFECT,
                target,
                Stand.AT_FOCUS);
    }

    /** What to trace. */
    Scenario scenario() {
        return scenario;
    }
}
