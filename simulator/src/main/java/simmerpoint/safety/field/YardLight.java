package simmerpoint.safety.field;

import java.util.List;
import java.util.Optional;
import simmerpoint.geometry.Vec;
import simmerpoint.scenario.Scenario;

/** All light in the yard of one cooker, reflected and direct, with the pan in place or taken away. Immutable. */
public final class YardLight {
    private final Scenario scenario;
    private final boolean panStands;
    private final List<LightField> fields;

    /** Of fields from the finest to the coarsest. */
    YardLight(Scenario scenario, boolean panStands, List<LightField> fields) {
        this.scenario = scenario;
        this.panStands = panStands;
        this.fields = List.copyOf(fields);
    }

    /**
     * The light on a small thing at a place, W/m².
     *
     * @param reflected most that one side of it gets from the mirrors, however it is turned or the way it faces; see {@link
     *     LightField.Light#most}
     * @param reflectedLeast the side that gets most gets no less than this
     * @param direct sunlight that reaches it, on a side that faces the sun
     * @param standardError of {@code reflected}
     */
    public record Irradiance(double reflected, double reflectedLeast, double direct, double standardError) {
        /** Light from the mirrors and from the sun together, as a thin thing takes it up through both sides: what sheets go by. */
        public double together() {
            return reflected + direct;
        }
    }

    /** Tells of one place after the other. Not thread-safe. */
    public final class Probe {
        private final SunShadow shadow = new SunShadow(scenario, panStands);
        private final LightField[] finest = fields.toArray(LightField[]::new);
        private final double beam = scenario.sun().beamWattsPerSquareMetre();
        private final Vec sun =
                Yard.of(scenario).direction(scenario.setup().sun().vec());

        /** The light at a place of the yard; only that of the sun beyond all boxes, and none inside of the pan. */
        public Irradiance at(Vec place) {
            if (shadow.inPan(place)) {
                return new Irradiance(0, 0, 0, 0);
            }
            return with(reflected(place), place);
        }

        /** The light on one side of a surface. */
        public Irradiance at(Surface surface) {
            if (surface.facing().isEmpty() || shadow.inPan(surface.place())) {
                return at(surface.place());
            }
            Vec facing = surface.facing().get();
            LightField.Light light = reflected(surface.place());
            double direct = shadow.isLit(surface.place()) ? beam * Math.max(0, sun.dot(facing)) : 0;
            return new Irradiance(light.most(facing), light.least(facing), direct, light.standardError());
        }

        /** The same if it can come to {@code flux} W/m² at all; empty for weaker light, which is quicker to see. */
        public Optional<Irradiance> ifAtLeast(double flux, Vec place) {
            LightField field = field(place);
            if (field.bound(place) + beam < flux) {
                return Optional.empty();
            }
            LightField.Light light = field.at(place);
            return light.most() + beam >= flux && !shadow.inPan(place)
                    ? Optional.of(with(light, place))
                    : Optional.empty();
        }

        /**
         * Light of mirrors and sun together, W/m², that of the mirrors the mean over three places in a row across the dish's axis, so that
         * the noise of single cells does not show; 0 where it cannot come to {@code least}.
         */
        public double smooth(Vec place, double apart, double least) {
            Vec[] row = {place.plus(new Vec(0, -apart, 0)), place, place.plus(new Vec(0, apart, 0))};
            double bound = 0;
            for (Vec each : row) {
                bound += field(each).bound(each);
            }
            if (bound / row.length + beam < least || shadow.inPan(place)) {
                return 0;
            }
            double reflected = 0;
            for (Vec each : row) {
                reflected += reflected(each).most();
            }
            return reflected / row.length + (shadow.isLit(place) ? beam : 0);
        }

        private Irradiance with(LightField.Light light, Vec place) {
            return new Irradiance(light.most(), light.least(), shadow.isLit(place) ? beam : 0, light.standardError());
        }

        private LightField.Light reflected(Vec place) {
            return field(place).at(place);
        }

        /** The finest field of a place; a dark one beyond all boxes. */
        private LightField field(Vec place) {
            for (LightField field : finest) {
                if (field.box().holds(place)) {
                    return field;
                }
            }
            return LightField.DARK;
        }
    }

    /** The same in the strongest sun: light goes up with the beam. This one where no sun is stronger. */
    public YardLight inStrongestSun() {
        double times = StrongestSun.beam(scenario) / scenario.sun().beamWattsPerSquareMetre();
        return times > 1
                ? new YardLight(
                        StrongestSun.of(scenario),
                        panStands,
                        fields.stream().map(field -> field.times(times)).toList())
                : this;
    }

    /** The cooker. */
    public Scenario scenario() {
        return scenario;
    }

    /** Whether the pan is in place. */
    public boolean panStands() {
        return panStands;
    }

    /** The fields, the finest first. */
    public List<LightField> fields() {
        return fields;
    }

    /** Middle of the cell that surely has most reflected light. */
    public Vec hottest() {
        Vec best = Vec.ZERO;
        double most = -1;
        for (LightField field : fields) {
            FieldBox box = field.box();
            for (int k = 0; k < box.nz(); k++) {
                for (int j = 0; j < box.ny(); j++) {
                    for (int i = 0; i < box.nx(); i++) {
                        double here = field.sure(i, j, k, most);
                        if (here > most) {
                            most = here;
                            best = box.middle(i, j, k);
                        }
                    }
                }
            }
        }
        return best;
    }
}
