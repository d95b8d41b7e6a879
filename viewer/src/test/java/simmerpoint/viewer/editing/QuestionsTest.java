package simmerpoint.viewer.editing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.ScriptedAsks;
import simmerpoint.viewer.document.ScenarioDocument;

/** The few questions and their sensible answers, without a window. */
class QuestionsTest {
    private final ScenarioDocument document = new ScenarioDocument();

    private Scenario scenario() {
        return document.readProperty().get().scenario();
    }

    private Start start(BuilderQuestion question, String id, UnitSystem units) {
        return question.starts(scenario(), units).stream()
                .filter(start -> start.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everySensibleAnswerIsOneAndThenHolds() {
        for (UnitSystem units : UnitSystem.values()) {
            for (BuilderQuestion question : BuilderQuestion.values()) {
                if (!question.fits(scenario())) {
                    continue;
                }
                for (Start start : question.starts(scenario(), units)) {
                    if (question != BuilderQuestion.CUT) {
                        document.apply(start.edit());
                    } else {
                        new ChoiceEdits(document, new ScriptedAsks())
                                .choose(
                                        Keys.find(BuilderQuestion.CUT_KEY).orElseThrow(),
                                        start.typed().get(BuilderQuestion.CUT_KEY));
                    }
                    assertEquals(List.of(), document.state().problems(), question + " " + start.words());
                    assertTrue(start.holds(document.state()), question + " " + start.words());
                }
            }
        }
    }

    /** Depth of a paraboloid at its middle: D² ÷ 16 f (definition of the parabola). */
    @Test
    void aDeepDishIsDeeperThanAShallowOne() {
        document.apply(
                start(BuilderQuestion.DEPTH, "shallow", UnitSystem.METRIC).edit());
        double shallow = scenario().dish().parabola().height(scenario().dish().radiusMetres());
        assertEquals(1.2 * 1.2 / 16 / 0.9, shallow, 1e-9);
        document.apply(start(BuilderQuestion.DEPTH, "deep", UnitSystem.METRIC).edit());
        double deep = scenario().dish().parabola().height(scenario().dish().radiusMetres());
        assertEquals(1.2 * 1.2 / 16 / 0.55, deep, 1e-9);
        assertFalse(start(BuilderQuestion.DEPTH, "shallow", UnitSystem.METRIC).holds(document.state()));
    }

    @Test
    void anotherMirrorTakesAwayTheFiguresOfTheOldOne() {
        assertTrue(document.state().typed("mirror.reflectance").isPresent());
        document.apply(
                start(BuilderQuestion.MIRROR, "silvered", UnitSystem.METRIC).edit());
        assertTrue(document.state().typed("mirror.reflectance").isEmpty());
        assertEquals(0.93, scenario().mirror().reflectance(), 1e-9);
        document.undo();
        assertTrue(document.state().typed("mirror.reflectance").isPresent(), "one step back");
    }

    @Test
    void theSameLengthWrittenOtherwiseHolds() {
        document.change(Map.of("dish.diameter", "1200 mm"));
        assertTrue(start(BuilderQuestion.WIDTH, "usual", UnitSystem.METRIC).holds(document.state()));
    }

    private void choose(String cut) {
        new ChoiceEdits(document, new ScriptedAsks())
                .choose(Keys.find(BuilderQuestion.CUT_KEY).orElseThrow(), cut);
    }

    /** Zones and rims go with every cut that is no dish of its own, and undo takes them back in one step. */
    @Test
    void everyCutCanHaveZonesAndARim() {
        for (String cut : List.of("flat-rings", "bent-strips", "square-tiles", "hexagon-tiles", "smooth")) {
            choose(cut);
            for (BuilderQuestion question : List.of(BuilderQuestion.ZONES, BuilderQuestion.RIM)) {
                for (Start start : question.starts(scenario(), UnitSystem.METRIC)) {
                    document.apply(start.edit());
                    assertEquals(List.of(), document.state().problems(), cut + ", " + start.words());
                    assertTrue(start.holds(document.state()), cut + ", " + start.words());
                    assertTrue(document.state().read().warnings().isEmpty(), cut + ", " + start.words());
                }
            }
            document.apply(
                    start(BuilderQuestion.ZONES, "one", UnitSystem.METRIC).edit());
            document.apply(
                    start(BuilderQuestion.RIM, "round", UnitSystem.METRIC).edit());
        }
        choose("flat-rings");
        document.apply(
                start(BuilderQuestion.ZONES, "patches", UnitSystem.METRIC).edit());
        document.undo();
        assertTrue(scenario().dish().cut().zones().isEmpty());
    }

    @Test
    void aZoneThatWasChangedIsSavedAndReadAgain() throws Exception {
        document.apply(
                start(BuilderQuestion.ZONES, "patches", UnitSystem.METRIC).edit());
        document.change(Map.of("dish.zones.patches.mirror.slope-error", "9 mrad"));
        String saved = document.readProperty().get().values().sourceText();
        Scenario again = ScenarioReader.parse("saved", saved, Path.of("")).scenario();
        assertEquals(scenario(), again);
        assertEquals(9e-3, again.mirror("patches").slopeErrorRadians(), 1e-12);
    }

    /** Own figures of a zone's mirror begin with those it had; an old antenna has no zones, and another cut brings none back. */
    @Test
    void choicesKnowZones() {
        document.apply(
                start(BuilderQuestion.ZONES, "outside", UnitSystem.METRIC).edit());
        double before = scenario().mirror("rim").reflectance();
        new ChoiceEdits(document, new ScriptedAsks())
                .choose(Keys.find("dish.zones.rim.mirror.material").orElseThrow(), "own figures");
        assertEquals(List.of(), document.state().problems());
        assertEquals(before, scenario().mirror("rim").reflectance(), 5e-4);
        choose("off-axis-shell");
        assertEquals(List.of(), document.state().problems());
        assertFalse(BuilderQuestion.ZONES.fits(scenario()));
    }
}
