package simmerpoint.viewer.editing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Control;
import javafx.scene.control.Labeled;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.scenario.file.ExampleScenario;
import simmerpoint.scenario.keys.Key;
import simmerpoint.scenario.keys.Keys;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.FxThread;
import simmerpoint.viewer.document.OpenedFile;
import simmerpoint.viewer.document.ScenarioDocument;

/** An editor in a real window, used by mouse and keys. */
@Tag("slow")
class EditorWindowTest {
    private static final String DIAMETER = "dish.diameter";
    private static final String HUB = "dish.hub";

    @TempDir
    Path folder;

    private Editors.Shown shown;

    @AfterEach
    void close() {
        shown.close();
    }

    private void open(ScenarioDocument document) {
        shown = Editors.show(document);
    }

    private Node control(String path) {
        return shown.pane().row(path).orElseThrow().control();
    }

    private String typed(String path) {
        return shown.document().state().typed(path).orElse("");
    }

    private void goTo(String path) {
        FxThread.run(() -> shown.pane().goTo(path));
        FxThread.until(path + " has the keyboard", () -> control(path).isFocused());
    }

    private static void press(KeyCode... keys) {
        FxThread.run(() -> {
            Robot robot = new Robot();
            for (KeyCode key : keys) {
                robot.keyPress(key);
            }
            for (int k = keys.length - 1; k >= 0; k--) {
                robot.keyRelease(keys[k]);
            }
        });
        FxThread.settle();
    }

    private void click(Node node) {
        FxThread.run(() -> {
            Bounds bounds = node.localToScreen(node.getBoundsInLocal());
            Robot robot = new Robot();
            robot.mouseMove(bounds.getCenterX(), bounds.getCenterY());
            robot.mouseClick(MouseButton.PRIMARY);
        });
        FxThread.settle();
    }

    private void type(String path, KeyCode... keys) {
        goTo(path);
        FxThread.run(() -> ((TextField) control(path)).selectAll());
        for (KeyCode key : keys) {
            press(key);
        }
    }

    @Test
    void pointedAtAKeySaysHowItIsWrittenAndWhatIsNotReadBelowIt() throws Exception {
        open(new ScenarioDocument());
        goTo(HUB);
        String meaning = Keys.find(HUB).orElseThrow().sentence();
        Control hub = (Control) control(HUB);
        assertEquals(HUB, FxThread.get(() -> hub.getTooltip().getText()));
        click(shown.pane().lookup("#explain"));
        String caption = FxThread.get(() -> hub.getTooltip().getText());
        assertTrue(caption.startsWith(HUB + "\n" + meaning), caption);
    }

    @Test
    void aWrongValueIsMarkedUndoneAndTheRestSaved() throws Exception {
        Path file = Files.writeString(folder.resolve("a.yaml"), ExampleScenario.text());
        open(new ScenarioDocument(OpenedFile.read(file)));
        type(HUB, KeyCode.W, KeyCode.I, KeyCode.D, KeyCode.E);
        FxThread.until("the desk has it", () -> typed(HUB).equals("wide"));
        Node mark = shown.pane().row(HUB).orElseThrow().lookup(".wrong-mark");
        assertTrue(mark.isVisible() && mark.getBoundsInLocal().getHeight() > 10);
        assertTrue(((Labeled) mark.lookup(".label")).getText().startsWith("wide is not a length"));
        assertTrue(control(HUB).getPseudoClassStates().toString().contains("wrong"));
        String head = shown.pane().groups().get(1).getText();
        assertTrue(head.endsWith("1 wrong"), head);
        assertEquals(1, shown.document().state().problems().size());

        type(DIAMETER, KeyCode.DIGIT9, KeyCode.DIGIT5, KeyCode.SPACE, KeyCode.C, KeyCode.M, KeyCode.ENTER);
        assertEquals("95 cm", typed(DIAMETER));
        FxThread.run(() -> {
            try {
                assertEquals(ScenarioDocument.Saving.DONE, shown.document().save());
            } catch (simmerpoint.report.OutputException e) {
                throw new AssertionError(e);
            }
        });
        assertEquals(
                ExampleScenario.text().replaceFirst("diameter: 1.20 m ", "diameter: 95 cm  "), Files.readString(file));

        press(KeyCode.CONTROL, KeyCode.Z);
        assertEquals("1.20 m", typed(DIAMETER));
        assertEquals("1.20 m", ((TextField) control(DIAMETER)).getText());
        press(KeyCode.CONTROL, KeyCode.Z);
        assertEquals("60 mm", typed(HUB));
        assertFalse(mark.isVisible());
        press(KeyCode.CONTROL, KeyCode.Y);
        assertEquals("wide", typed(HUB));
        press(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.Z);
        assertEquals("95 cm", typed(DIAMETER));
    }

    /** The change comes without the return key, and what was typed key by key is one step. */
    @Test
    void aPauseInTypingIsEnoughAndEscapeTakesItBack() throws Exception {
        open(new ScenarioDocument());
        type(DIAMETER, KeyCode.DIGIT9, KeyCode.DIGIT0, KeyCode.SPACE, KeyCode.C, KeyCode.M);
        FxThread.until("a pause", () -> typed(DIAMETER).equals("90 cm"));
        press(KeyCode.BACK_SPACE);
        press(KeyCode.BACK_SPACE);
        press(KeyCode.BACK_SPACE);
        FxThread.until("a bare number gets the unit", () -> typed(DIAMETER).equals("90 cm"));
        press(KeyCode.DIGIT5);
        FxThread.until("another pause", () -> typed(DIAMETER).equals("905 cm"));
        press(KeyCode.ESCAPE);
        assertEquals("1.20 m", typed(DIAMETER));
        press(KeyCode.TAB);
        assertFalse(shown.document().dirtyProperty().get());
        assertFalse(shown.document().undoableProperty().get());
    }

    @Test
    void aDragOfTheSliderIsOneStep() throws Exception {
        open(new ScenarioDocument());
        goTo(DIAMETER);
        Node slider = shown.pane().row(DIAMETER).orElseThrow().lookup(".slider");
        Node thumb = slider.lookup(".thumb");
        FxThread.run(() -> {
            Bounds bounds = thumb.localToScreen(thumb.getBoundsInLocal());
            Robot robot = new Robot();
            robot.mouseMove(bounds.getCenterX(), bounds.getCenterY());
            robot.mousePress(MouseButton.PRIMARY);
            for (int k = 1; k <= 20; k++) {
                robot.mouseMove(bounds.getCenterX() + k, bounds.getCenterY());
            }
            robot.mouseRelease(MouseButton.PRIMARY);
        });
        FxThread.settle();
        double dragged = shown.document().readProperty().get().scenario().dish().diameterMetres();
        assertTrue(dragged > 1.3, typed(DIAMETER));
        assertTrue(typed(DIAMETER).matches("[12]\\.?[0-9]{0,2} m"), typed(DIAMETER));
        press(KeyCode.CONTROL, KeyCode.Z);
        assertEquals("1.20 m", typed(DIAMETER));
        assertFalse(shown.document().undoableProperty().get());
    }

    /** Turbidity has no figure of its own while the setting says how clear the air is. */
    @Test
    void aSliderOfANumberThatIsNotThereYetGivesOne() throws Exception {
        open(new ScenarioDocument(OpenedFile.read(Path.of("../scenarios/lake-hut-evening.yaml"))));
        FxThread.run(() -> shown.document().reset("sky.setting"));
        goTo("sky.turbidity");
        Slider slider = (Slider) shown.pane().row("sky.turbidity").orElseThrow().lookup(".slider");
        FxThread.run(() -> slider.setValue(4.02));
        assertTrue(typed("sky.turbidity").matches("4(\\.0[0-9]?)?"), typed("sky.turbidity"));
        assertEquals(
                Optional.empty(), shown.document().state().problems().stream().findFirst());
    }

    @Test
    void backToTheDefaultByItsButton() throws Exception {
        open(new ScenarioDocument());
        goTo(HUB);
        Node button = shown.pane()
                .row(HUB)
                .orElseThrow()
                .lookupAll(".back")
                .iterator()
                .next();
        assertTrue(button.isVisible());
        click(button);
        assertEquals("", typed(HUB));
        assertEquals(0, shown.document().readProperty().get().scenario().dish().hubMetres());
        assertFalse(button.isVisible());
        assertEquals("0 mm", ((TextField) control(HUB)).getPromptText());
    }

    @Test
    void aWordIsChosenByKeys() throws Exception {
        open(new ScenarioDocument());
        goTo("dish.surface.cut");
        press(KeyCode.DOWN);
        assertEquals("bent-strips", typed("dish.surface.cut"));
        assertEquals("", typed("dish.surface.rings"));
        assertFalse(shown.pane().row("dish.surface.rings").orElseThrow().isVisible());
        press(KeyCode.CONTROL, KeyCode.Z);
        assertEquals("6", typed("dish.surface.rings"));
        assertTrue(shown.pane().row("dish.surface.rings").orElseThrow().isVisible());
    }

    /** The question was folded before, so that its rows are made last and hear of changes last. */
    @Test
    void rowsComeAndGoWithTheChoiceInALateOpenedQuestionToo() throws Exception {
        open(new ScenarioDocument());
        goTo("sun.shape.kind");
        assertFalse(shown.pane().row("sun.shape.ratio").orElseThrow().isVisible());
        FxThread.run(() -> ((WordBox) control("sun.shape.kind")).setValue("circumsolar"));
        assertTrue(shown.pane().row("sun.shape.ratio").orElseThrow().isVisible());
        assertFalse(shown.pane().row("sun.shape.half-angle").orElseThrow().isVisible());
    }

    @Test
    void findsKeysByWordsAndSaysWhatIsNear() throws Exception {
        open(new ScenarioDocument());
        TextField find = (TextField) shown.pane().lookup("#find-key");
        FxThread.run(() -> find.setText("sun climbed"));
        assertTrue(shown.pane().row("aim.drift.up").orElseThrow().isVisible());
        assertFalse(shown.pane().row(HUB).orElseThrow().isVisible());
        FxThread.run(() -> find.setText("tile"));
        KeyRow tile = shown.pane().row("dish.surface.tile").orElseThrow();
        assertTrue(tile.isVisible() && tile.control().isDisabled());
        FxThread.run(() -> find.setText("dish.diametre"));
        Labeled found = (Labeled) shown.pane().lookup("#found");
        assertTrue(found.isVisible() && found.getText().contains("Did you mean dish.diameter?"), found.getText());
        FxThread.run(find::clear);
        assertTrue(shown.pane().row(HUB).orElseThrow().isVisible());
        assertFalse(shown.pane().groups().get(4).isExpanded());
    }

    @Test
    void unitsSwitchWhatStandsInTheFields() throws Exception {
        open(new ScenarioDocument());
        FxThread.run(() -> shown.units().set(UnitSystem.INCH));
        assertEquals("47 1/4 in", ((TextField) control(DIAMETER)).getText());
        assertEquals(ExampleScenario.text(), shown.document().state().values().sourceText());
        FxThread.run(() -> shown.units().set(UnitSystem.METRIC));
        assertEquals("1.20 m", ((TextField) control(DIAMETER)).getText());
    }

    /** Every control that can be used gets the keyboard by the tabulator alone. */
    @Test
    void theKeyboardReachesAll() throws Exception {
        open(new ScenarioDocument());
        FxThread.run(() -> {
            shown.pane().groups().forEach(group -> group.setExpanded(true));
            shown.pane().lookup("#find-key").requestFocus();
        });
        FxThread.settle();
        Set<Node> reached = new HashSet<>();
        Robot robot = FxThread.get(Robot::new);
        boolean more = true;
        for (int k = 0; k < 400 && more; k++) {
            more = FxThread.get(() -> {
                boolean another = reached.add(shown.stage().getScene().getFocusOwner());
                robot.keyType(KeyCode.TAB);
                return another;
            });
        }
        for (Key key : Keys.all()) {
            boolean usable = shown.pane().row(key.path()).orElseThrow().isVisible();
            assertTrue(!usable || reached.contains(control(key.path())), key.path());
        }
        assertTrue(reached.size() > 100, "only " + reached.size());
    }

    @Test
    void aFileIsChosenAndNamedFromTheScenariosFolder() throws Exception {
        Path mesh = Files.copy(Path.of("../scenarios/triangle-dish.obj"), folder.resolve("my dish.obj"));
        Path file = Files.writeString(folder.resolve("a.yaml"), ExampleScenario.text());
        ScenarioDocument document = new ScenarioDocument(OpenedFile.read(file));
        shown = Editors.show(document, UnitSystem.METRIC, Editors.answering(mesh));
        goTo("dish.surface.cut");
        FxThread.run(() -> ((WordBox) control("dish.surface.cut")).setValue("from-file"));
        FxThread.settle();
        assertEquals("my dish.obj", typed("dish.surface.file"));
        FxThread.run(() -> document.change(java.util.Map.of("dish.surface.file", "another.obj")));
        assertTrue(document.state().wrongAt("dish.surface.file").isPresent());
        goTo("dish.surface.file");
        click(shown.pane()
                .row("dish.surface.file")
                .orElseThrow()
                .lookupAll(".button")
                .iterator()
                .next());
        assertEquals("my dish.obj", typed("dish.surface.file"));
        assertEquals(Optional.empty(), document.state().problems().stream().findFirst());
        assertEquals(
                215,
                ((simmerpoint.dish.cut.FromFile)
                                document.readProperty().get().scenario().dish().cut())
                        .mesh()
                        .polygons());
    }
}
