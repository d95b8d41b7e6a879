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
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;

class ScenarioDocumentTest {
    private static final String TEXT = """
            title: Hut   # of the lake
            dish:
              diameter: 1.20 m
              focal-length: 0.80 m
              surface: {cut: flat-rings, sectors: 24, rings: 6}
            pan: {diameter: 24 cm}
            """;

    private static ScenarioDocument document() throws ScenarioException {
        return new ScenarioDocument(
                new OpenedFile(Optional.empty(), ScenarioReader.parse("t.yaml", TEXT, Path.of(""))));
    }

    private static double diameter(ScenarioDocument document) {
        return document.readProperty().get().scenario().dish().diameterMetres();
    }

    @Test
    void aGoodChangeComesIntoForceAndIsToldOnce() throws Exception {
        ScenarioDocument document = document();
        List<CheckedScenario> heard = new ArrayList<>();
        document.readProperty().addListener((p, before, now) -> heard.add(now));
        document.change(Map.of("dish.diameter", "48 in"));
        assertEquals(1, heard.size());
        assertEquals(1.2192, diameter(document), 1e-12);
        assertEquals(TEXT.replace("1.20 m", "48 in"), document.state().values().sourceText());
        assertTrue(document.dirtyProperty().get());
        document.change(Map.of("dish.diameter", "48 in"));
        assertEquals(1, heard.size());
    }

    @Test
    void aWrongValueIsKeptAsTypedAndTheLastGoodScenarioStays() throws Exception {
        ScenarioDocument document = document();
        CheckedScenario before = document.readProperty().get();
        document.change(Map.of("dish.diameter", "1,5 m"));
        assertSame(before, document.readProperty().get());
        assertEquals(Optional.of("1,5 m"), document.state().typed("dish.diameter"));
        assertTrue(document.state().wrongAt("dish.diameter").orElseThrow().contains("write 1.5 m"));
        assertEquals(TEXT, document.state().values().sourceText());
        document.change(Map.of("dish.diameter", "1.5 m"));
        assertEquals(1.5, diameter(document));
        assertEquals(List.of(), document.state().problems());
    }

    @Test
    void otherKeysGoOnWorkingBesideAWrongOne() throws Exception {
        ScenarioDocument document = document();
        document.change(Map.of("dish.hub", "wide"));
        document.change(Map.of("dish.diameter", "1.5 m"));
        assertEquals(1.5, diameter(document));
        assertEquals(Optional.of("wide"), document.state().typed("dish.hub"));
        assertTrue(document.state().wrongAt("dish.hub").isPresent());
        document.change(Map.of("dish.hub", "6 cm", "dish.gap", "2 mm"));
        assertEquals(0.06, document.readProperty().get().scenario().dish().hubMetres());
        assertTrue(document.state().problems().isEmpty()
                && document.state().pending().isNone());
    }

    /** A pan of 24 cm does not fit a dish of 20 cm; the fault is told at the pan, the change waits at the dish. */
    @Test
    void aChangeThatAnotherKeyForbidsWaitsUntilThatFits() throws Exception {
        ScenarioDocument document = document();
        document.change(Map.of("dish.diameter", "20 cm"));
        assertEquals(1.2, diameter(document));
        assertTrue(document.state().wrongAt("pan.diameter").isPresent());
        assertEquals(Optional.of("20 cm"), document.state().typed("dish.diameter"));
        document.change(Map.of("stand.raise", "1 cm"));
        assertEquals(0.01, document.readProperty().get().scenario().stand().raiseMetres());
        assertTrue(document.state().wrongAt("pan.diameter").isPresent());
        document.change(Map.of("pan.diameter", "12 cm"));
        assertEquals(0.2, diameter(document));
        assertTrue(document.state().problems().isEmpty());
    }

    @Test
    void anotherCutWaitsForWhatItNeeds() throws Exception {
        ScenarioDocument document = document();
        document.change(Map.of("dish.surface.cut", "square-tiles"));
        assertEquals(Optional.of("square-tiles"), document.state().typed("dish.surface.cut"));
        assertTrue(document.state().wrongAt("dish.surface.tile").isPresent());
        document.change(Map.of("dish.surface.tile", "50 mm"));
        assertTrue(document.state().values().sourceText().contains("surface: {cut: square-tiles, tile: 50 mm}"));
        document.undo();
        document.undo();
        assertEquals(TEXT, document.state().values().sourceText());
    }

    @Test
    void undoAndRedoWalkThroughWrongValuesToo() throws Exception {
        ScenarioDocument document = document();
        assertFalse(document.undoableProperty().get());
        document.change(Map.of("dish.diameter", "1.3 m"));
        document.change(Map.of("dish.diameter", "x"));
        document.undo();
        assertEquals(Optional.of("1.3 m"), document.state().typed("dish.diameter"));
        assertTrue(document.state().problems().isEmpty());
        document.undo();
        assertFalse(document.undoableProperty().get());
        assertFalse(document.dirtyProperty().get());
        document.redo();
        document.redo();
        assertEquals(Optional.of("x"), document.state().typed("dish.diameter"));
        assertFalse(document.redoableProperty().get());
        document.undo();
        document.change(Map.of("dish.gap", "1 mm"));
        assertFalse(document.redoableProperty().get());
    }

    @Test
    void aGestureIsUndoneInOneStep() throws Exception {
        ScenarioDocument document = document();
        document.change(Map.of("stand.raise", "1 cm"));
        document.beginGesture();
        for (int k = 2; k < 30; k++) {
            document.change(Map.of("stand.raise", k + " cm"));
        }
        document.endGesture();
        document.change(Map.of("stand.side", "1 cm"));
        document.undo();
        assertEquals(Optional.of("29 cm"), document.state().typed("stand.raise"));
        document.undo();
        assertEquals(Optional.of("1 cm"), document.state().typed("stand.raise"));
        document.redo();
        assertEquals(Optional.of("29 cm"), document.state().typed("stand.raise"));
    }

    @Test
    void aGestureThatComesBackLeavesNoTrace() throws Exception {
        ScenarioDocument document = document();
        document.beginGesture();
        document.change(Map.of("dish.diameter", "1.3 m"));
        document.change(Map.of("dish.diameter", "1.20 m"));
        document.endGesture();
        assertFalse(document.undoableProperty().get());
        document.beginGesture();
        document.endGesture();
        assertFalse(document.undoableProperty().get());
    }

    @Test
    void resetGivesTheDefaultBack() throws Exception {
        ScenarioDocument document = document();
        document.change(Map.of("dish.hub", "8 cm"));
        document.reset("dish.hub");
        assertEquals(TEXT, document.state().values().sourceText());
        document.apply(Edit.drop("pan").then(Edit.type("plane.disc", "30 cm")));
        assertTrue(document.state().hasSection("plane") && !document.state().hasSection("pan"));
        document.reset("plane.disc");
        assertEquals(Optional.of("20 cm"), document.state().typed("plane.disc"));
        document.change(Map.of("sun.shape.kind", "gaussian", "sun.shape.sigma", "3 mrad"));
        document.reset("sun.shape.kind");
        assertTrue(
                document.state().problems().isEmpty(),
                document.state().problems().toString());
        assertEquals(Optional.empty(), document.state().typed("sun.shape.sigma"));
    }

    @Test
    void aNeededKeyCannotBeTakenOut() throws Exception {
        ScenarioDocument document = document();
        document.reset("dish.diameter");
        assertEquals(1.2, diameter(document));
        assertTrue(document.state().wrongAt("dish.diameter").orElseThrow().contains("missing"));
        assertEquals(Optional.empty(), document.state().typed("dish.diameter"));
        document.change(Map.of("dish.diameter", "1 m"));
        assertEquals(1.0, diameter(document));
        assertTrue(document.state().problems().isEmpty());
    }

    @Test
    void saysWhatWouldBeLost() throws Exception {
        ScenarioDocument document = document();
        assertEquals(Optional.empty(), document.unsaved());
        document.change(Map.of("dish.hub", "6 cm"));
        assertEquals(Optional.of("“Hut” has changes that are not saved."), document.unsaved());
        document.change(Map.of("dish.gap", "?"));
        assertTrue(document.unsaved().orElseThrow().contains("dish.gap"));
    }
}
