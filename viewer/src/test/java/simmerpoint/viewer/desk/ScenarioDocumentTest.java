package simmerpoint.viewer.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.ReadScenario;
import simmerpoint.scenario.ScenarioException;

class ScenarioDocumentTest {
    private static final String TEXT = """
            title: Hut   # of the lake
            dish:
              diameter: 1.20 m
              focal-length: 0.80 m
              surface: {cut: flat-rings, sectors: 24, rings: 6}
            pan: {diameter: 24 cm}
            """;

    private static ScenarioDocument desk() throws ScenarioException {
        return new ScenarioDocument(OpenedFile.text("t.yaml", TEXT, Path.of("")));
    }

    private static double diameter(ScenarioDocument desk) {
        return desk.readProperty().get().scenario().dish().diameterMetres();
    }

    @Test
    void aGoodChangeComesIntoForceAndIsToldOnce() throws Exception {
        ScenarioDocument desk = desk();
        List<ReadScenario> heard = new ArrayList<>();
        desk.readProperty().addListener((p, before, now) -> heard.add(now));
        desk.change(Map.of("dish.diameter", "48 in"));
        assertEquals(1, heard.size());
        assertEquals(1.2192, diameter(desk), 1e-12);
        assertEquals(TEXT.replace("1.20 m", "48 in"), desk.state().values().sourceText());
        assertTrue(desk.dirtyProperty().get());
        desk.change(Map.of("dish.diameter", "48 in"));
        assertEquals(1, heard.size());
    }

    @Test
    void aWrongValueIsKeptAsTypedAndTheLastGoodScenarioStays() throws Exception {
        ScenarioDocument desk = desk();
        ReadScenario before = desk.readProperty().get();
        desk.change(Map.of("dish.diameter", "1,5 m"));
        assertSame(before, desk.readProperty().get());
        assertEquals(Optional.of("1,5 m"), desk.state().typed("dish.diameter"));
        assertTrue(desk.state().wrongAt("dish.diameter").orElseThrow().contains("write 1.5 m"));
        assertEquals(TEXT, desk.state().values().sourceText());
        desk.change(Map.of("dish.diameter", "1.5 m"));
        assertEquals(1.5, diameter(desk));
        assertEquals(List.of(), desk.state().problems());
    }

    @Test
    void otherKeysGoOnWorkingBesideAWrongOne() throws Exception {
        ScenarioDocument desk = desk();
        desk.change(Map.of("dish.hub", "wide"));
        desk.change(Map.of("dish.diameter", "1.5 m"));
        assertEquals(1.5, diameter(desk));
        assertEquals(Optional.of("wide"), desk.state().typed("dish.hub"));
        assertTrue(desk.state().wrongAt("dish.hub").isPresent());
        desk.change(Map.of("dish.hub", "6 cm", "dish.gap", "2 mm"));
        assertEquals(0.06, desk.readProperty().get().scenario().dish().hubMetres());
        assertTrue(desk.state().problems().isEmpty() && desk.state().pending().isNone());
    }

    /** A pan of 24 cm does not fit a dish of 20 cm; the fault is told at the pan, the change waits at the dish. */
    @Test
    void aChangeThatAnotherKeyForbidsWaitsUntilThatFits() throws Exception {
        ScenarioDocument desk = desk();
        desk.change(Map.of("dish.diameter", "20 cm"));
        assertEquals(1.2, diameter(desk));
        assertTrue(desk.state().wrongAt("pan.diameter").isPresent());
        assertEquals(Optional.of("20 cm"), desk.state().typed("dish.diameter"));
        desk.change(Map.of("stand.raise", "1 cm"));
        assertEquals(0.01, desk.readProperty().get().scenario().stand().raiseMetres());
        assertTrue(desk.state().wrongAt("pan.diameter").isPresent());
        desk.change(Map.of("pan.diameter", "12 cm"));
        assertEquals(0.2, diameter(desk));
        assertTrue(desk.state().problems().isEmpty());
    }

    @Test
    void anotherCutWaitsForWhatItNeeds() throws Exception {
        ScenarioDocument desk = desk();
        desk.change(Map.of("dish.surface.cut", "square-tiles"));
        assertEquals(Optional.of("square-tiles"), desk.state().typed("dish.surface.cut"));
        assertTrue(desk.state().wrongAt("dish.surface.tile").isPresent());
        desk.change(Map.of("dish.surface.tile", "50 mm"));
        assertTrue(desk.state().values().sourceText().contains("surface: {cut: square-tiles, tile: 50 mm}"));
        desk.undo();
        desk.undo();
        assertEquals(TEXT, desk.state().values().sourceText());
    }

    @Test
    void undoAndRedoWalkThroughWrongValuesToo() throws Exception {
        ScenarioDocument desk = desk();
        assertFalse(desk.undoableProperty().get());
        desk.change(Map.of("dish.diameter", "1.3 m"));
        desk.change(Map.of("dish.diameter", "x"));
        desk.undo();
        assertEquals(Optional.of("1.3 m"), desk.state().typed("dish.diameter"));
        assertTrue(desk.state().problems().isEmpty());
        desk.undo();
        assertFalse(desk.undoableProperty().get());
        assertFalse(desk.dirtyProperty().get());
        desk.redo();
        desk.redo();
        assertEquals(Optional.of("x"), desk.state().typed("dish.diameter"));
        assertFalse(desk.redoableProperty().get());
        desk.undo();
        desk.change(Map.of("dish.gap", "1 mm"));
        assertFalse(desk.redoableProperty().get());
    }

    @Test
    void aGestureIsUndoneInOneStep() throws Exception {
        ScenarioDocument desk = desk();
        desk.change(Map.of("stand.raise", "1 cm"));
        desk.beginGesture();
        for (int k = 2; k < 30; k++) {
            desk.change(Map.of("stand.raise", k + " cm"));
        }
        desk.endGesture();
        desk.change(Map.of("stand.side", "1 cm"));
        desk.undo();
        assertEquals(Optional.of("29 cm"), desk.state().typed("stand.raise"));
        desk.undo();
        assertEquals(Optional.of("1 cm"), desk.state().typed("stand.raise"));
        desk.redo();
        assertEquals(Optional.of("29 cm"), desk.state().typed("stand.raise"));
    }

    @Test
    void aGestureThatComesBackLeavesNoTrace() throws Exception {
        ScenarioDocument desk = desk();
        desk.beginGesture();
        desk.change(Map.of("dish.diameter", "1.3 m"));
        desk.change(Map.of("dish.diameter", "1.20 m"));
        desk.endGesture();
        assertFalse(desk.undoableProperty().get());
        desk.beginGesture();
        desk.endGesture();
        assertFalse(desk.undoableProperty().get());
    }

    @Test
    void resetGivesTheDefaultBack() throws Exception {
        ScenarioDocument desk = desk();
        desk.change(Map.of("dish.hub", "8 cm"));
        desk.reset("dish.hub");
        assertEquals(TEXT, desk.state().values().sourceText());
        desk.apply(Edit.drop("pan").then(Edit.type("plane.disc", "30 cm")));
        assertTrue(desk.state().hasSection("plane") && !desk.state().hasSection("pan"));
        desk.reset("plane.disc");
        assertEquals(Optional.of("20 cm"), desk.state().typed("plane.disc"));
        desk.change(Map.of("sun.shape.kind", "gaussian", "sun.shape.sigma", "3 mrad"));
        desk.reset("sun.shape.kind");
        assertTrue(desk.state().problems().isEmpty(), desk.state().problems().toString());
        assertEquals(Optional.empty(), desk.state().typed("sun.shape.sigma"));
    }

    @Test
    void aNeededKeyCannotBeTakenOut() throws Exception {
        ScenarioDocument desk = desk();
        desk.reset("dish.diameter");
        assertEquals(1.2, diameter(desk));
        assertTrue(desk.state().wrongAt("dish.diameter").orElseThrow().contains("missing"));
        assertEquals(Optional.empty(), desk.state().typed("dish.diameter"));
        desk.change(Map.of("dish.diameter", "1 m"));
        assertEquals(1.0, diameter(desk));
        assertTrue(desk.state().problems().isEmpty());
    }

    @Test
    void saysWhatWouldBeLost() throws Exception {
        ScenarioDocument desk = desk();
        assertEquals(Optional.empty(), desk.unsaved());
        desk.change(Map.of("dish.hub", "6 cm"));
        assertEquals(Optional.of("“Hut” has changes that are not saved."), desk.unsaved());
        desk.change(Map.of("dish.gap", "?"));
        assertTrue(desk.unsaved().orElseThrow().contains("dish.gap"));
    }
}
