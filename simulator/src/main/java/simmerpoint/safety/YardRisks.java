package simmerpoint.safety;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import simmerpoint.geometry.Vec;
import simmerpoint.safety.field.FieldBox;
import simmerpoint.safety.field.LightField;
import simmerpoint.safety.field.Reach;
import simmerpoint.safety.field.ReachSearch;
import simmerpoint.safety.field.Way;
import simmerpoint.safety.field.YardLight;
import simmerpoint.safety.risk.Hazard;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.trace.LazyValue;

/** What the light of one cooker reaches, with the pan in place or without. Places are looked for when they are first asked for. */
public final class YardRisks {
    private final YardLight light;
    private final List<Reach> reaches;
    private final Supplier<HotPlace> hottest;
    private final Supplier<HotPlace> ground;

    /** Of that light. */
    YardRisks(YardLight light) {
        this.light = light;
        reaches = List.copyOf(ReachSearch.of(light));
        hottest = new LazyValue<>(() -> HotPlace.of(light, light.hottest()));
        ground = new LazyValue<>(() -> HotPlace.of(light, ground(light)));
    }

    /** All of it. */
    public YardLight light() {
        return light;
    }

    /** How far each hazard reaches, mildest first. */
    public List<Reach> reaches() {
        return reaches;
    }

    /** Where there is most light from the mirrors. */
    public HotPlace hottest() {
        return hottest.get();
    }

    /** Where the ground gets most of it. */
    public HotPlace ground() {
        return ground.get();
    }

    /** How far one hazard reaches. */
    public Reach reach(Hazard hazard) {
        return reaches.stream()
                .filter(reach -> reach.hazard() == hazard)
                .findFirst()
                .orElseThrow();
    }

    /** The farthest from the focus that a hazard reaches, but for the light between dish and focus. */
    public Optional<Estimate> farthest(Hazard hazard) {
        return Stream.of(Way.AXIS, Way.RIM, Way.SIDE)
                .flatMap(way -> reach(hazard).of(way).stream())
                .max(Comparator.comparingDouble(Estimate::value));
    }

    /** The place on the ground with most reflected light, by the lowest cells of the widest box. */
    private static Vec ground(YardLight light) {
        LightField field = light.fields().get(light.fields().size() - 1);
        FieldBox box = field.box();
        Vec best = box.middle(0, 0, 0);
        double most = -1;
        for (int j = 0; j < box.ny(); j++) {
            for (int i = 0; i < box.nx(); i++) {
                double here = field.cell(i, j, 0).most();
                if (here > most) {
                    most = here;
                    best = box.middle(i, j, 0);
                }
            }
        }
        return new Vec(best.x(), best.y(), box.corner().z() + 0.01);
    }
}
