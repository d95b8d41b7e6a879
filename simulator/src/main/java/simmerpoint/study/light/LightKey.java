package simmerpoint.study.light;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.built.BuiltDish;
import simmerpoint.dish.built.Mask;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.geometry.Vec;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Setup;
import simmerpoint.sun.SunShape;

/**
 * What decides the light that leaves the mirrors, seen from the dish: scenarios with equal keys differ only in what
 * stands in that light and in what the mirrors keep of it. A dish under a sun that has drifted and one turned the other way have
 * the same key.
 *
 * @param dish its plan, with the slits that workmanship leaves
 * @param mask what covers part of it
 * @param mirror its errors, with all shares of light taken out
 * @param sun its direction in the dish frame to 1e-12, its beam and its shape at equal shares of its light
 * @param jitter rad
 * @param pivot about what a shaking dish turns, dish frame: its mount, or the pan that it carries; empty if it stands still
 * @param stood how everything stands, if panels may hide each other: that is judged in the target's frame; else empty
 */
public record LightKey(
        DishPlan dish,
        Mask mask,
        Mirror mirror,
        List<Double> sun,
        double jitter,
        Optional<Vec> pivot,
        Optional<Setup> stood) {
    private static final double SAME_DIRECTION = 1e12;
    private static final double SAME_PLACE = 1e9;
    private static final int SHAPE_POINTS = 32;

    /** Of the sun alone, in which keys of one search differ first; the rest would cost the first answer some 20 ms. */
    @Override
    public int hashCode() {
        return sun.hashCode();
    }

    /** The key of {@code scenario}. */
    public static LightKey of(Scenario scenario) {
        Setup setup = scenario.setup();
        boolean mayBlock = !scenario.dish().cut().has(CutTrait.PARABOLOID);
        Vec carried = setup.dish().fromParent(setup.target().origin());
        return of(scenario, carried, mayBlock ? Optional.of(setup) : Optional.empty());
    }

    /**
     * The key of a dish whose panels are known not to hide each other, wherever its pan stands. A pan that a shaking dish
     * carries is taken to shake as at the place for which the light was cast: off by jitter × the distance from there.
     */
    static LightKey wherever(Scenario scenario) {
        return of(scenario, Vec.ZERO, Optional.empty());
    }

    private static LightKey of(Scenario scenario, Vec carried, Optional<Setup> stood) {
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
        Aim aim = scenario.aim();
        return new LightKey(
                built.layout(),
                built.mask(),
                errors,
                sun(scenario, scenario.setup()),
                aim.jitterRadians(),
                aim.jitterRadians() > 0 ? Optional.of(pivot(aim, carried)) : Optional.empty(),
                stood);
    }

    private static Vec pivot(Aim aim, Vec carried) {
        if (aim.panCarriedBy() == Aim.PanCarrier.STAND) {
            return new Vec(0, 0, -aim.mountMetres());
        }
        return new Vec(rounded(carried.x()), rounded(carried.y()), rounded(carried.z()));
    }

    private static double rounded(double metres) {
        return Math.rint(metres * SAME_PLACE) / SAME_PLACE + 0.0;
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
