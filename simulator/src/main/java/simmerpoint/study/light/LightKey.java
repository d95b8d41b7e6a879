package simmerpoint.study.light;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.built.BuiltDish;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.geometry.Vec;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Setup;
import simmerpoint.sun.SunShape;

/**
 * What decides the light that leaves the mirrors, seen from the dish: scenarios with equal keys differ only in what
 * stands in that light and in what the mirrors keep of it. A dish under a sun that has drifted and one turned the other way have
 * the same key.
 *
 * @param dish its plan, with the slits that workmanship leaves
 * @param mirror its errors, with all shares of light taken out
 * @param sun its direction in the dish frame to 1e-12, its beam and its shape at equal shares of its light
 * @param jitter rad
 * @param stood how everything stands, if panels may hide each other: that is judged in the target's frame; else empty
 */
public record LightKey(DishPlan dish, Mirror mirror, List<Double> sun, double jitter, Optional<Setup> stood) {
    private static final double SAME_DIRECTION = 1e12;
    private static final int SHAPE_POINTS = 32;

    /** The key of {@code scenario}. */
    public static LightKey of(Scenario scenario) {
        BuiltDish built = scenario.built();
        Mirror m = built.mirror();
        Mirror errors = new Mirror(
                "",
                1,
                0,
                m.slopeErrorRadians(),
                m.beamSpreadRadians(),
                m.wideShare(),
                m.wideSpreadRadians(),
                0,
                m.panelTiltRadians());
        Setup setup = scenario.setup();
        boolean mayBlock = !scenario.dish().cut().has(CutTrait.PARABOLOID);
        return new LightKey(
                built.layout(),
                errors,
                sun(scenario, setup),
                scenario.aim().jitterRadians(),
                mayBlock ? Optional.of(setup) : Optional.empty());
    }

    /** The key of a dish whose panels are known not to hide each other, wherever it stands. */
    LightKey wherever() {
        return new LightKey(dish, mirror, sun, jitter, Optional.empty());
    }

    private static List<Double> sun(Scenario scenario, Setup setup) {
        Vec towards = setup.sunInDish().vec();
        SunShape shape = scenario.sun().shape();
        DoubleStream direction =
                DoubleStream.of(towards.x(), towards.y(), towards.z()).map(c -> Math.rint(c * SAME_DIRECTION) + 0.0);
        DoubleStream shares =
                IntStream.rangeClosed(0, SHAPE_POINTS).mapToDouble(k -> shape.inverse((double) k / SHAPE_POINTS));
        DoubleStream beam = DoubleStream.of(scenario.sun().beamWattsPerSquareMetre());
        return DoubleStream.concat(direction, DoubleStream.concat(beam, shares))
                .boxed()
                .toList();
    }
}
