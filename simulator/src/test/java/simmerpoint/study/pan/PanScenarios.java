package simmerpoint.study.pan;

import simmerpoint.dish.Cut;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.cut.BentStrips;
import simmerpoint.dish.cut.FlatRings;
import simmerpoint.dish.cut.RingSpacing;
import simmerpoint.dish.cut.Smooth;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.pan.Finish;
import simmerpoint.pan.Pan;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Stand;
import simmerpoint.study.Once;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.sun.Sunlight;
import simmerpoint.sun.UniformDiscSun;

/** Cookers whose pans are moved in tests. */
public final class PanScenarios {
    private PanScenarios() {}

    /** D 1.2 m, f 0.8 m, 24 sectors in 6 rings, 85 %, 5 mrad; pan 24 cm wide, 11 cm high; sun at this elevation. */
    public static Scenario rings(double elevationDegrees, double beam) {
        Cut cut = new FlatRings(24, 6, RingSpacing.EQUAL_WIDTH);
        return scenario(
                new DishPlan(1.2, 0.8, 0.06, 0, cut), Mirror.plain(0.85, 5e-3), elevationDegrees, beam, 0.12, 0.11);
    }

    /** A long dish: D 0.9 m, f 0.9 m, 32 bent strips, 90 %, 4 mrad; pan 25 cm wide, 10 cm high, sun at 45°. */
    public static Scenario longDish() {
        DishPlan dish = new DishPlan(0.9, 0.9, 0.012, 0, new BentStrips(32));
        return scenario(dish, Mirror.plain(0.9, 4e-3), 45, 1000, 0.125, 0.10);
    }

    /** Any dish with a smooth bowl. */
    public static Scenario smooth(double diameter, double focal, double beam) {
        DishPlan dish = new DishPlan(diameter, focal, 0.05, 0, new Smooth());
        return scenario(dish, Mirror.plain(0.85, 5e-3), 50, beam, 0.12, 0.11);
    }

    private static Scenario scenario(
            DishPlan dish, Mirror mirror, double elevationDegrees, double beam, double radius, double height) {
        return new Scenario(
                "Tea kitchen",
                dish,
                mirror,
                new Sunlight(Math.toRadians(elevationDegrees), beam, new UniformDiscSun(4.65e-3)),
                Aim.PERFECT,
                new Pan(2 * radius, height, new Finish("black", 0.9)),
                Stand.AT_FOCUS);
    }

    /** Studied with few rays on two threads. */
    public static PanResult study(Scenario scenario) {
        return Once.of(() -> PanStudy.run(scenario, options(), Progress.NONE), "pan", scenario);
    }

    static TraceOptions options() {
        return TraceOptions.defaults().withRays(1 << 17).withSeed(77).withThreads(2);
    }
}
