package simmerpoint.study.light;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import simmerpoint.dish.Cut;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.built.BuiltDish;
import simmerpoint.dish.built.Mask;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.dish.shape.ShapeErrors;
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
    private static final double[] NONE = {};

    private final Cut cut;
    private final Mask mask;
    private final ShapeErrors shape;

    /**
     * The dish with the slits that workmanship leaves, the errors of its mirror, the sun (its direction in the dish frame to 1e-12, its
     * beam and its shape at equal shares of its light), how the dish shakes and about what, and how everything stands if panels may hide
     * each other, which is judged in the target's frame. What is left out changes the number of numbers.
     */
    private final double[] numbers;

    private LightKey(BuiltDish built, double[]... numbers) {
        cut = built.layout().cut();
        mask = built.mask();
        shape = built.shape();
        this.numbers = joined(numbers);
    }

    private static double[] joined(double[]... parts) {
        int length = 0;
        for (double[] part : parts) {
            length += part.length;
        }
        double[] all = new double[length];
        int at = 0;
        for (double[] part : parts) {
            System.arraycopy(part, 0, all, at, part.length);
            at += part.length;
        }
        return all;
    }

    /** Not a record: the methods that Java makes up for large ones cost the first answer some 20 ms. */
    @Override
    public boolean equals(Object other) {
        return other instanceof LightKey key
                && Arrays.equals(numbers, key.numbers)
                && Objects.equals(cut, key.cut)
                && Objects.equals(mask, key.mask)
                && Objects.equals(shape, key.shape);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(numbers);
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
                dish(built),
                errors(built.mirrors()),
                sun(scenario, scenario.setup()),
                new double[] {aim.jitterRadians()},
                aim.jitterRadians() > 0 ? numbers(pivot(built.layout(), aim, carried)) : NONE,
                stood.map(Setup::numbers).orElse(NONE));
    }

    private static double[] dish(BuiltDish built) {
        DishPlan dish = built.layout();
        return new double[] {
            dish.diameterMetres(),
            dish.focalLengthMetres(),
            dish.hubMetres(),
            dish.gapMetres(),
            built.weighedElevation()
        };
    }

    /** Without the shares of light. */
    private static double[] errors(List<Mirror> mirrors) {
        return joined(mirrors.stream().map(LightKey::errors).toArray(double[][]::new));
    }

    private static double[] errors(Mirror mirror) {
        return new double[] {
            mirror.slopeErrorRadians(),
            mirror.beamSpreadRadians(),
            mirror.wideShare(),
            mirror.wideSpreadRadians(),
            mirror.panelTiltRadians()
        };
    }

    private static double[] numbers(Vec vec) {
        return new double[] {vec.x(), vec.y(), vec.z()};
    }

    private static Vec pivot(DishPlan dish, Aim aim, Vec carried) {
        if (aim.panCarriedBy() == Aim.PanCarrier.STAND) {
            return dish.mount(aim.mountMetres());
        }
        return new Vec(rounded(carried.x()), rounded(carried.y()), rounded(carried.z()));
    }

    private static double rounded(double metres) {
        return Math.rint(metres * SAME_PLACE) / SAME_PLACE + 0.0;
    }

    private static double[] sun(Scenario scenario, Setup setup) {
        double[] all = new double[SHAPE_POINTS + 5];
        Vec towards = setup.sunInDish().vec();
        all[0] = Math.rint(towards.x() * SAME_DIRECTION) + 0.0;
        all[1] = Math.rint(towards.y() * SAME_DIRECTION) + 0.0;
        all[2] = Math.rint(towards.z() * SAME_DIRECTION) + 0.0;
        all[3] = scenario.sun().beamWattsPerSquareMetre();
        SunShape shape = scenario.sun().shape();
        for (int k = 0; k <= SHAPE_POINTS; k++) {
            all[4 + k] = shape.inverse((double) k / SHAPE_POINTS);
        }
        return all;
    }
}
