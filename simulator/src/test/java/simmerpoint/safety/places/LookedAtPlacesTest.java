package simmerpoint.safety.places;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import simmerpoint.safety.CookerLight;
import simmerpoint.safety.SafetyResult;
import simmerpoint.safety.SafetyStudy;
import simmerpoint.safety.risk.Stuff;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

class LookedAtPlacesTest {
    private static final String DISH =
            "dish: {diameter: 1.2 m, focal-length: 0.8 m, surface: {cut: smooth}}\nsun: {elevation: 90°, beam: 800 W/m²}\n"
                    + "mirror: {material: own figures, reflectance: 0.85, scattered: 0, slope-error: 0 mrad, beam-spread: 0 mrad,"
                    + " wide-share: 0, panel-tilt: 0 mrad}\n";

    private static CheckedScenario read(String more) throws ScenarioException {
        return ScenarioReader.parse("test", DISH + more, Path.of("."));
    }

    /** What things can be made of is listed twice, since the scenario must not know this package. */
    @Test
    void theScenarioHasTheSameWordsForWhatThingsAreMadeOf() {
        for (String name : Keys.namesIn("look-at")) {
            assertEquals(
                    Stuff.words().toList(),
                    Keys.get("look-at." + name + ".made-of").words(),
                    name);
            assertEquals(
                    Facing.words().toList(),
                    Keys.get("look-at." + name + ".facing").words(),
                    name);
        }
    }

    @Test
    void anUnknownPlaceNamesThoseThereAre() {
        ScenarioException refused =
                assertThrows(ScenarioException.class, () -> read("look-at: {roof: {towards-sun: 1 m, height: 1 m}}\n"));
        assertTrue(refused.getMessage().contains("bracket, arm, handle, wall, grass, bench"), refused.getMessage());
        ScenarioException missing =
                assertThrows(ScenarioException.class, () -> read("look-at: {bench: {towards-sun: 1 m}}\n"));
        assertTrue(missing.getMessage().contains("look-at.bench.height"), missing.getMessage());
    }

    /**
     * The same place, asked which way it looks: light of the mirrors comes from below within 5° of upright, the sun's from above.
     */
    @Test
    void whichWayAThingLooksCounts() throws ScenarioException {
        double expected = 0.85 * 800 * 4;
        LookedAt down = above("down");
        assertTrue(down.taken().reflected() > 0.95 * expected, down.toString());
        assertEquals(0, down.taken().direct(), 1e-9);
        LookedAt up = above("up");
        assertTrue(up.taken().reflected() < 0.02 * expected, up.toString());
        assertEquals(800, up.taken().direct(), 1e-6);
        LookedAt left = above("left");
        assertTrue(left.taken().reflected() < 0.15 * expected, left.toString());
        assertEquals(
                down.taken().reflected(), above("towards the focus").taken().reflected(), 1e-3 * expected);
        assertEquals(down.seen(), up.seen(), "eyes look at the mirror");
    }

    private static LookedAt above(String facing) throws ScenarioException {
        CheckedScenario read = read("plane: {disc: 10 cm}\naim: {mount: 0 cm}\nstand: {tripod-height: 60 cm}\n"
                + "look-at: {bracket: {towards-sun: 0 cm, height: 180 cm, facing: " + facing + "}}\n");
        CookerLight light = SafetyStudy.light(
                read.scenario(), TraceOptions.defaults().withRays(1 << 16).withThreads(2), Progress.NONE);
        return LookedAtPlaces.of(
                        read.values(), light.standing().light(), light.taken().light())
                .get(0);
    }

    /**
     * Sun overhead, 40 cm above the focus of a perfect dish without a pan: ρ·DNI·(f/ζ)² = 0.85 · 800 · 4 = 2720 W/m² from below and
     * 800 from above (closed form of the light off the focus); within half a fist up to 11 % more.
     */
    @Test
    void aNamedPlaceGetsTheLightOfTheClosedForm() throws ScenarioException {
        CheckedScenario read = read("plane: {disc: 10 cm}\naim: {mount: 0 cm}\nstand: {tripod-height: 60 cm}\n"
                + "look-at: {bracket: {towards-sun: 0 cm, height: 180 cm}}\n");
        SafetyResult result = SafetyStudy.run(
                read, false, TraceOptions.defaults().withRays(1 << 17).withThreads(2), Progress.NONE);
        List<LookedAt> asked =
                result.places().stream().filter(LookedAt::isAsked).toList();
        assertEquals(1, asked.size());
        LookedAt bracket = asked.get(0);
        assertEquals(Stuff.WOOD, bracket.stuff());
        double expected = 0.85 * 800 * 4;
        double error = 5 * bracket.standing().standardError();
        assertTrue(bracket.standing().reflected() > 0.97 * expected - error, bracket.toString());
        assertTrue(bracket.standing().reflected() < 1.2 * expected + error, bracket.toString());
        assertEquals(800, bracket.standing().direct(), 1e-9);
    }
}
