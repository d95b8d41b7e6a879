package simmerpoint.study.light;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import simmerpoint.dish.Cut;
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
 */
public final class LightKey {
    private static final double SAME_DIRECTION = 1e12;
    private static final double SAME_PLACE = 1e9;
    private static final int SHAPE_POINTS = 32;

    private final Cut cut;
    private final Mask mask;

    /**
     * The dish with the slits that workmanship leaves, the errors of its mirror, the sun (its direction in the dish frame to 1e-12, its
     * beam and its shape at equal shares of its light), how the dish shakes and about what, and how everything stands if panels may hide
     * each other, which is judged in the target's frame. What is left out changes the number of numbers.
     */
    private final List<Double> numbers;

    private LightKey(BuiltDish built, DoubleStream numbers) {
        cut = built.layout().cut();
        mask = built.mask();
        this.numbers = numbers.boxed().toList();
    }

    /** Not a record: the methods that Java makes up for large ones cost the first answer some 20 ms. */
    @Override
    public boolean equals(Object other) {
        return other instanceof LightKey key
                && numbers.equals(key.numbers)
                && (cut == key.cut || cut.equals(key.cut))
                && (mask == key.mask || mask.equals(key.mask));
    }

    @Override
    public int hashCode() {
        return numbers.hashCode();
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
        Aim aim = scenario.aim();
        return new LightKey(
                built,
                Stream.of(
                                dish(built.layout()),
                                errors(built.mirror()),
                                sun(scenario, scenario.setup()),
                                DoubleStream.of(aim.jitterRadians()),
                                aim.jitterRadians() > 0 ? numbers(pivot(aim, carried)) : DoubleStream.empty(),
                                stood.map(setup -> Arrays.stream(setup.numbers()))
                                        .orElse(DoubleStream.empty()))
                        .flatMapToDouble(part -> part));
    }

    private static DoubleStream dish(DishPlan dish) {
        return DoubleStream.of(dish.diameterMetres(), dish.focalLengthMetres(), dish.hubMetres(), dish.gapMetres());
    }

    /** Without the shares of light. */
    private static DoubleStream errors(Mirror mirror) {
        return DoubleStream.of(
                mirror.slopeErrorRadians(),
                mirror.beamSpreadRadians(),
                mirror.wideShare(),
                mirror.wideSpreadRadians(),
                mirror.panelTiltRadians());
    }

    private static DoubleStream numbers(Vec vec) {
        return DoubleStream.of(vec.x(), vec.y(), vec.z());
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

    private static DoubleStream sun(Scenario scenario, Setup setup) {
        Vec towards = setup.sunInDish().vec();
        SunShape shape = scenario.sun().shape();
        DoubleStream direction =
                DoubleStream.of(towards.x(), towards.y(), towards.z()).map(c -> Math.rint(c * SAME_DIRECTION) + 0.0);
        DoubleStream shares =
                IntStream.rangeClosed(0, SHAPE_POINTS).mapToDouble(k -> shape.inverse((double) k / SHAPE_POINTS));
        DoubleStream beam = DoubleStream.of(scenario.sun().beamWattsPerSquareMetre());
        return DoubleStream.concat(direction, DoubleStream.concat(beam, shares));
    }
}
