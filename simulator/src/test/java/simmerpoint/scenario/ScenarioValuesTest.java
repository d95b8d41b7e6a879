package simmerpoint.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.scenario.values.ScenarioValues;

class ScenarioValuesTest {
    private static ScenarioValues read(String text) throws ScenarioException {
        return ScenarioReader.values("t.yaml", text, Path.of(""));
    }

    private static ScenarioValues good() throws ScenarioException {
        return read(BadInput.GOOD);
    }

    @Test
    void settingAValueLeavesTheFirstAsItWas() throws Exception {
        ScenarioValues before = good();
        ScenarioValues after = before.with(Map.of("pan.diameter", "12 in", "stand.raise", "2 cm"));
        assertEquals(0.12, CheckedScenario.of(before).scenario().target().radiusMetres(), 1e-12);
        assertEquals(0.1524, CheckedScenario.of(after).scenario().target().radiusMetres(), 1e-12);
        assertEquals(Optional.of("12 in"), after.typed("pan.diameter"));
        assertEquals(Optional.of("24 cm"), before.typed("pan.diameter"));
        assertEquals(Optional.empty(), before.typed("stand.raise"));
        assertFalse(after.isSameAs(before));
    }

    /** In the file and in an override; what is saved is read back with it. */
    @Test
    void aDoubtIsReadAndSaved() throws Exception {
        ScenarioValues before = read(BadInput.GOOD.replace("diameter: 24 cm", "diameter: 24 cm +- 4 mm"));
        assertEquals(0.002, before.deviation("pan.diameter").orElseThrow(), 1e-12);
        assertEquals(0.24, before.number("pan.diameter"), 1e-12);
        assertTrue(before.deviation("dish.diameter").isEmpty());
        ScenarioValues after = before.with(Map.of("mirror.reflectance", "0.85 ± 0.03"));
        assertEquals(0.015, after.deviation("mirror.reflectance").orElseThrow(), 1e-12);
        assertEquals(0.85, CheckedScenario.of(after).scenario().mirror().reflectance());
        ScenarioValues saved = read(after.sourceText());
        assertEquals(Optional.of("0.85 ± 0.03"), saved.typed("mirror.reflectance"));
        assertEquals(Optional.of("24 cm +- 4 mm"), saved.typed("pan.diameter"));
        assertEquals(0.002, saved.deviation("pan.diameter").orElseThrow(), 1e-12);
    }

    @Test
    void aDoubtThatIsNoneIsRefused() {
        ScenarioException refused = assertThrows(
                ScenarioException.class,
                () -> CheckedScenario.of(read(BadInput.GOOD.replace("diameter: 24 cm", "diameter: 24 cm ± 2 kg"))));
        assertTrue(refused.getMessage().contains("pan.diameter: 2 kg is not a length"), refused.getMessage());
        assertThrows(
                ScenarioException.class,
                () -> CheckedScenario.of(read(BadInput.GOOD.replace("diameter: 24 cm", "diameter: 24 cm ± -2 mm"))));
    }

    @Test
    void comingBackGivesTheTextThatWasRead() throws Exception {
        ScenarioValues there = good().with(Map.of("dish.surface.cut", "smooth", "aim.turn.up", "1°"));
        assertFalse(there.typed().containsKey("dish.surface.sectors"));
        ScenarioValues back = there.without(List.of("aim.turn.up"))
                .with(Map.of(
                        "dish.surface.cut", "flat-rings", "dish.surface.rings", "6", "dish.surface.sectors", "24"));
        assertTrue(back.isSameAs(good()));
        assertEquals(BadInput.GOOD, back.sourceText());
    }

    @Test
    void asectionLeftWithoutKeysGoesAndItsDefaultsHold() throws Exception {
        ScenarioValues bare = read(BadInput.GOOD.replace("pan:\n  diameter: 24 cm\n", "plane: {}\n"));
        assertTrue(bare.hasSection("plane"));
        assertTrue(CheckedScenario.of(bare).scenario().cooking().isEmpty());
        ScenarioValues pan = bare.without(List.of("plane", "mirror.slope-error"));
        assertFalse(pan.hasSection("plane") || pan.hasSection("mirror"));
        assertTrue(CheckedScenario.of(pan).scenario().cooking().isPresent());
        assertFalse(pan.sourceText().contains("plane") || pan.sourceText().contains("mirror"), pan.sourceText());
    }

    /** The lines are those of the text; a value that does not stand in it has none. */
    @Test
    void wrongValuesAreToldWhenTheyAreCheckedWithTheirLine() throws Exception {
        ScenarioValues wrong = read(BadInput.with("hub: 60 mm", "hub: wide"));
        ScenarioException e = assertThrows(ScenarioException.class, () -> CheckedScenario.of(wrong));
        assertTrue(e.getMessage().startsWith("t.yaml, line 5, dish.hub: wide is not a length"), e.getMessage());
        ScenarioValues other = wrong.with(Map.of("dish.hub", "2 m"));
        ScenarioException large = assertThrows(ScenarioException.class, () -> CheckedScenario.of(other));
        assertEquals(
                "t.yaml, line 2, dish.hub: 2 m is not smaller than the dish, which is 1.2 m wide", large.getMessage());
        assertEquals(
                0.05,
                CheckedScenario.of(other.with(Map.of("dish.hub", "5 cm")))
                        .scenario()
                        .dish()
                        .hubMetres());
    }

    @Test
    void aMissingKeyIsToldWhenItIsTakenOut() throws Exception {
        ScenarioValues none = good().without(List.of("dish.diameter"));
        ScenarioException e = assertThrows(ScenarioException.class, () -> CheckedScenario.of(none));
        assertEquals("dish.diameter", e.problems().get(0).key());
        assertTrue(e.problems().get(0).missing());
    }

    @Test
    void movedToAnotherFolderEverythingIsFoundAgain() throws Exception {
        Path here = Path.of("../scenarios");
        ScenarioValues values = ScenarioReader.values(here.resolve("triangle-dish.yaml"));
        ScenarioValues moved = values.movedTo("other.yaml", Path.of("src/test"));
        assertEquals(Optional.of("../../../scenarios/triangle-dish.obj"), moved.typed("dish.surface.file"));
        assertEquals(
                CheckedScenario.of(values).scenario().dish(),
                CheckedScenario.of(moved).scenario().dish());
        assertTrue(moved.sourceText().contains("file: ../../../scenarios/triangle-dish.obj"), moved.sourceText());
        assertEquals("other.yaml", moved.name());
    }
}
