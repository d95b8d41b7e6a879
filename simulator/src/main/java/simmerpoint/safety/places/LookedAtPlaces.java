package simmerpoint.safety.places;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
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

    private LookedAtPlaces() {}

    /**
     * All of them.
     *
     * @param values of the scenario, with its places
     * @param scenario the same
     * @param standing light with the pan in place
     * @param taken light without it
     */
    public static List<LookedAt> of(ScenarioValues values, Scenario scenario, YardLight standing, YardLight taken) {
        List<LookedAt> places = new ArrayList<>();
        for (String name : Keys.namesIn(SECTION)) {
            String path = SECTION + "." + name;
            if (values.hasSection(path)) {
                places.add(look(
                        name,
                        true,
                        Stuff.named(values.text(path + ".made-of")),
                        new Vec(
                                values.number(path + ".towards-sun"),
                                values.number(path + ".right"),
                                values.number(path + ".height")),
                        standing,
                        taken));
            }
        }
        if (scenario.target() instanceof Pan pan) {
            places.addAll(usual(scenario, pan, standing, taken));
        }
        return places;
    }

    private static List<LookedAt> usual(Scenario scenario, Pan pan, YardLight standing, YardLight taken) {
        Yard yard = Yard.of(scenario);
        Vec below = yard.place(scenario.setup().target().origin()).plus(new Vec(0, 0, -BELOW_PAN));
        Vec edge = yard.place(scenario.setup().target().toParent(new Vec(pan.radiusMetres() + FIST, 0, -0.005)));
        return List.of(
                look("stand just below the pan", false, Stuff.WOOD, below, standing, taken),
                look("grate at the edge of the pan", false, Stuff.STONE, edge, standing, taken));
    }

    private static LookedAt look(
            String name, boolean asked, Stuff stuff, Vec place, YardLight standing, YardLight taken) {
        return new LookedAt(name, asked, stuff, place, most(standing, place), most(taken, place));
    }

    /** The strongest light at the place and half a fist beside it. */
    private static YardLight.Irradiance most(YardLight light, Vec place) {
        YardLight.Probe probe = light.new Probe();
        YardLight.Irradiance most = probe.at(place);
        for (int k = 0; k < 6; k++) {
            double by = (k % 2 == 0 ? 1 : -1) * FIST / 2;
            Vec step = new Vec(k / 2 == 0 ? by : 0, k / 2 == 1 ? by : 0, k / 2 == 2 ? by : 0);
            YardLight.Irradiance here = probe.at(place.plus(step));
            most = here.together() > most.together() ? here : most;
        }
        return most;
    }
}
