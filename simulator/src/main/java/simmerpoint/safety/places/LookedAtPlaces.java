package simmerpoint.safety.places;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.safety.eyes.SeenPatch;
import simmerpoint.safety.field.Surface;
import simmerpoint.safety.field.Yard;
import simmerpoint.safety.field.YardLight;
import simmerpoint.safety.risk.Stuff;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.scenario.values.ScenarioValues;

/**
 * The places of {@code look-at} in a scenario, and those that every cooker has: what holds the pan up, just below it, and the
 * edge of the underside, where a grate lies. A thing is as wide as a fist: the light is the most within {@value #FIST} m.
 */
public final class LookedAtPlaces {
    private static final String SECTION = "look-at";
    private static final double FIST = 0.04;
    private static final double BELOW_PAN = 0.1;

    private final Scenario scenario;
    private final YardLight standing;
    private final YardLight taken;

    private LookedAtPlaces(YardLight standing, YardLight taken) {
        scenario = standing.scenario();
        this.standing = standing;
        this.taken = taken;
    }

    /**
     * All of them.
     *
     * @param values of the scenario, with its places
     * @param standing light with the pan in place
     * @param taken light without it
     */
    public static List<LookedAt> of(ScenarioValues values, YardLight standing, YardLight taken) {
        return new LookedAtPlaces(standing, taken).of(values);
    }

    private List<LookedAt> of(ScenarioValues values) {
        List<LookedAt> places = new ArrayList<>();
        for (String name : Keys.namesIn(SECTION)) {
            String path = SECTION + "." + name;
            if (values.hasSection(path)) {
                Vec place = new Vec(
                        values.number(path + ".towards-sun"),
                        values.number(path + ".right"),
                        values.number(path + ".height"));
                Stuff stuff = Stuff.named(values.text(path + ".made-of"));
                places.add(look(name, true, stuff, Facing.named(values.text(path + ".facing")), place));
            }
        }
        if (scenario.target() instanceof Pan pan) {
            places.addAll(usual(pan));
        }
        return places;
    }

    private List<LookedAt> usual(Pan pan) {
        Yard yard = Yard.of(scenario);
        Vec below = yard.place(scenario.setup().target().origin()).plus(new Vec(0, 0, -BELOW_PAN));
        Vec edge = yard.place(scenario.setup().target().toParent(new Vec(pan.radiusMetres() + FIST, 0, -0.005)));
        Vec mount = new Vec(0, 0, scenario.heights().tripodHeightMetres());
        return List.of(
                look("stand just below the pan", false, Stuff.WOOD, Facing.WORST, below),
                look("grate at the edge of the pan", false, Stuff.STONE, Facing.WORST, edge),
                look("top of the tripod", false, Stuff.WOOD, Facing.WORST, mount));
    }

    private LookedAt look(String name, boolean asked, Stuff stuff, Facing facing, Vec place) {
        Surface surface = new Surface(place, facing.normal(scenario, place));
        Surface eye = Surface.worst(place);
        double seen = Math.max(most(standing, eye).reflected(), most(taken, eye).reflected());
        return new LookedAt(
                name,
                asked,
                stuff,
                facing,
                place,
                most(standing, surface),
                most(taken, surface),
                SeenPatch.of(scenario, seen));
    }

    /** The strongest light at the place and half a fist beside it. */
    private static YardLight.Irradiance most(YardLight light, Surface surface) {
        YardLight.Probe probe = light.new Probe();
        YardLight.Irradiance most = probe.at(surface);
        for (int k = 0; k < 6; k++) {
            double by = (k % 2 == 0 ? 1 : -1) * FIST / 2;
            Vec step = new Vec(k / 2 == 0 ? by : 0, k / 2 == 1 ? by : 0, k / 2 == 2 ? by : 0);
            YardLight.Irradiance here = probe.at(surface.moved(step));
            most = here.together() > most.together() ? here : most;
        }
        return most;
    }
}
