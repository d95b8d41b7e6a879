package simmerpoint.safety.parked;

import java.util.List;
import java.util.stream.IntStream;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.safety.field.Yard;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Aim;

/** Places along what holds the pan up: a post from the ground, or an arm from the upper rim of the dish that carries it. */
final class StandPlaces {
    private static final double STEP = 0.04;

    private StandPlaces() {}

    /** In the yard; none for a bare disc. */
    static List<Vec> of(Scenario scenario) {
        if (!(scenario.target() instanceof Pan)) {
            return List.of();
        }
        Yard yard = Yard.of(scenario);
        Vec pan = yard.place(scenario.setup().target().origin());
        Vec foot = scenario.aim().panCarriedBy() == Aim.PanCarrier.DISH
                ? yard.place(upperRim(scenario))
                : new Vec(pan.x(), pan.y(), 0);
        Vec along = pan.minus(foot);
        int n = (int) Math.ceil(along.length() / STEP);
        return IntStream.range(0, n)
                .mapToObj(k -> foot.plus(along.times((k + 0.5) / n)))
                .toList();
    }

    private static Vec upperRim(Scenario scenario) {
        return scenario.dish().onMirror(scenario.dish().upperEdgeMetres(), 0);
    }
}
