package simmerpoint.viewer.editing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.Scenario;
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
                for (Start start : question.starts(scenario(), units)) {
                    if (question != BuilderQuestion.CUT) {
                        document.apply(start.edit());
                    } else {
                        new ChoiceEdits(document, new ScriptedAsks())
                                .choose(
                                        simmerpoint.scenario.keys.Keys.find(BuilderQuestion.CUT_KEY)
                                                .orElseThrow(),
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
}
