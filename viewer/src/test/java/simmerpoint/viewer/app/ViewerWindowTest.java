package simmerpoint.viewer.app;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioButton;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInfo;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import simmerpoint.answer.trace.TraceSummary;
import simmerpoint.drawing.output.Paper;
import simmerpoint.quantities.TraceQuantities;
import simmerpoint.report.CutFiles;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.likely.LikelyStudy;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.FxThread;
import simmerpoint.viewer.Looking;
import simmerpoint.viewer.ScriptedAsks;
import simmerpoint.viewer.document.RecentFiles;
import simmerpoint.viewer.document.ScenarioDocument;
import simmerpoint.viewer.theme.Theme;
import simmerpoint.workshop.CookerStudy;
import simmerpoint.workshop.CutPlan;

/** The whole window, without a screen, moved by mouse and keys. */
@Tag("slow")
class ViewerWindowTest {
    @TempDir
    Path folder;

    private final ScriptedAsks dialogs = new ScriptedAsks();
    private ViewerWindow window;
    private Stage stage;

    @BeforeEach
    void open(TestInfo test) {
        boolean usual = test.getTags().contains("usual-rays");
        TraceOptions options = TraceOptions.defaults();
        TraceOptions asked = usual ? options : options.withRays(1 << 13);
        stage = FxThread.get(() -> {
            window = new ViewerWindow(
                    new ScenarioDocument(),
                    RecentFiles.forgotten(),
                    new DisplaySettings(UnitSystem.METRIC, Theme.LIGHT),
                    dialogs,
                    new Arguments.Size(1024, 700),
                    asked);
            window.begin();
            Stage s = new Stage();
            s.setScene(window.scene());
            s.show();
            s.requestFocus();
            return s;
        });
        awaitAnswer();
    }

    @AfterEach
    void close() {
        FxThread.run(() -> {
            stage.close();
            window.close();
        });
    }

    @Test
    void whateverGoesWrongInsideIsToldAndTheDesignStays() {
        CheckedScenario before =
                FxThread.get(() -> window.document().readProperty().get());
        // As JavaFX does with whatever leaves a handler; the toolkit of the tests would end its thread at a real one.
        FxThread.run(() -> Thread.currentThread()
                .getUncaughtExceptionHandler()
                .uncaughtException(Thread.currentThread(), new IllegalStateException("on purpose")));
        FxThread.until(
                "a sentence",
                () -> ((Label) window.scene().lookup("#notice-sentence"))
                        .getText()
                        .startsWith("Something went wrong inside the program (IllegalStateException)."));
        assertEquals(before, FxThread.get(() -> window.document().readProperty().get()));
    }

    private void awaitAnswer() {
        FxThread.until("the answer has settled", () -> {
            var state = window.live().stateProperty().get();
            return state != null
                    && state.settled()
                    && state.scenario()
                            .equals(window.document().readProperty().get().scenario());
        });
    }

    private <T extends Node> T find(String id, Class<T> kind) {
        return FxThread.get(() -> kind.cast(window.scene().lookup("#" + id)));
    }

    private void click(String id) {
        Node node = find(id, Node.class);
        FxThread.settle();
        FxThread.run(() -> {
            Bounds bounds = node.localToScreen(node.getBoundsInLocal());
            Robot robot = new Robot();
            robot.mouseMove(bounds.getCenterX(), bounds.getCenterY());
            robot.mouseClick(MouseButton.PRIMARY);
        });
        FxThread.settle();
    }

    private void press(KeyCode... codes) {
        FxThread.run(() -> {
            Robot robot = new Robot();
            for (KeyCode code : codes) {
                robot.keyPress(code);
            }
            for (int k = codes.length - 1; k >= 0; k--) {
                robot.keyRelease(codes[k]);
            }
        });
        FxThread.settle();
    }

    private static <T> T get(Callable<T> work) {
        return FxThread.get(work);
    }

    private void pullBack(String length) {
        FxThread.run(() -> window.document().change(Map.of("stand.pull-back", length)));
        awaitAnswer();
    }

    private String watts() {
        return get(() -> ((Label) window.scene().lookup("#answer-watts")).getText());
    }

    @Test
    @Tag("usual-rays")
    void changeUndoRedoAndSaveGiveTheWattsOfTheSavedFile() throws Exception {
        String before = watts();
        pullBack("6 cm");
        String after = watts();
        assertFalse(before.equals(after), after);
        click("undo");
        awaitAnswer();
        assertEquals(before, watts());
        press(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.Z);
        awaitAnswer();
        assertEquals(after, watts());
        Path file = folder.resolve("moved.yaml");
        dialogs.file = Optional.of(file);
        click("save");
        FxThread.until("the file is there", () -> Files.exists(file));
        TraceResult traced = traced(file);
        assertEquals(TraceSummary.of(traced, UnitSystem.METRIC).watts(), after);
        JsonNode json = new ObjectMapper().readTree(TraceQuantities.DOCUMENT.json(traced));
        var shown = get(() -> window.live().stateProperty().get().result().orElseThrow());
        assertEquals(
                json.get("absorbed_power_W").asDouble(),
                shown.ledger().absorbed().value(),
                1e-3);
        assertTrue(get(() -> window.document().unsaved().isEmpty()));
    }

    /** What the command line finds for a file. */
    private static TraceResult traced(Path file) throws Exception {
        CheckedScenario read = ScenarioReader.read(file);
        TraceOptions options = TraceOptions.defaults();
        return TraceStudy.run(read.scenario(), options, Progress.NONE)
                .withLikely(LikelyStudy.run(read, LikelyStudy.FOR_RANGE, options, Progress.NONE));
    }

    /** Takes hold of the drawn pan and pulls it away from the dish: the saved file must trace to the watts that are shown. */
    @Test
    @Tag("usual-rays")
    void aDragOfTheDrawnPanEndsInTheWattsOfTheSavedFile() throws Exception {
        FxThread.until("the yard is drawn", () -> window.yard().pixelsPerMetre() > 0);
        FxThread.settle();
        String before = watts();
        Node handle = find("yard-pan", Node.class);
        Robot robot = get(Robot::new);
        Bounds from = get(() -> handle.localToScreen(handle.getBoundsInLocal()));
        double reach = 0.08 * get(() -> window.yard().pixelsPerMetre());
        FxThread.run(() -> robot.mouseMove(from.getCenterX(), from.getCenterY()));
        FxThread.settle();
        FxThread.run(() -> robot.mousePress(MouseButton.PRIMARY));
        for (int k = 1; k <= 12; k++) {
            double way = reach * k / 12;
            // The axis of the dish rises at 50 degrees to the right.
            FxThread.run(() -> robot.mouseMove(
                    from.getCenterX() + way * Math.cos(Math.toRadians(50)),
                    from.getCenterY() - way * Math.sin(Math.toRadians(50))));
            FxThread.settle();
        }
        FxThread.run(() -> robot.mouseRelease(MouseButton.PRIMARY));
        awaitAnswer();
        double pulled = get(
                () -> window.document().readProperty().get().scenario().stand().pullBackMetres());
        assertEquals(0.08, pulled, 0.01);
        assertFalse(before.equals(watts()), "the watts stay " + before);
        Path file = folder.resolve("dragged.yaml");
        dialogs.file = Optional.of(file);
        FxThread.run(() -> window.files().save());
        TraceResult traced = traced(file);
        assertEquals(TraceSummary.of(traced, UnitSystem.METRIC).watts(), watts());
        TraceResult shown =
                get(() -> window.live().stateProperty().get().result().orElseThrow());
        assertEquals(traced.ledger(), shown.ledger());
        assertEquals(traced.spot(), shown.spot());
        // The whole drag is one step back.
        FxThread.run(() -> window.document().undo());
        awaitAnswer();
        assertEquals(before, watts());
    }

    @Test
    void theUnsavedIsAskedAboutBeforeAnotherIsOpened() {
        pullBack("3 cm");
        dialogs.answer = Optional.of(2);
        boolean left = get(() -> window.files().mayLeave());
        assertFalse(left);
        assertTrue(dialogs.asked.get(0).contains("changes that are not saved"), dialogs.asked.toString());
        dialogs.answer = Optional.of(1);
        assertTrue(get(() -> window.files().mayLeave()));
    }

    @Test
    void aFileThatCannotBeUsedIsRefusedInASentenceAndTheOldScenarioStays() throws Exception {
        Path bad = folder.resolve("bad.yaml");
        Files.writeString(bad, "dish: {diametr: 1 m}\n");
        dialogs.file = Optional.of(bad);
        FxThread.run(() -> window.files().open());
        Label sentence = find("notice-sentence", Label.class);
        FxThread.until("it is refused", () -> sentence.getText().contains("Not opened."));
        assertTrue(get(sentence::getText).contains("diametr"), get(sentence::getText));
        assertTrue(get(() -> window.document().fileProperty().get().isEmpty()));
    }

    @Test
    void aScenarioWithoutAMomentSaysWhatIsMissing() throws Exception {
        Path timeless = folder.resolve("timeless.yaml");
        Files.writeString(
                timeless,
                "dish: {diameter: 1.2 m, focal-length: 0.8 m, surface: {cut: smooth}}\nplace: {latitude: 46\u00b0 N, longitude: 8\u00b0 E, zone: UTC+1}\n");
        dialogs.file = Optional.of(timeless);
        FxThread.run(() -> window.files().open());
        FxThread.until("it is refused", () -> {
            var state = window.live().stateProperty().get();
            return state.refusal().isPresent();
        });
        assertTrue(get(() -> ((Label) window.scene().lookup("#answer-water")).getText())
                .contains("timeless.yaml"));
    }

    @Test
    @Tag("usual-rays")
    void figuresCanBeTakenAway() throws Exception {
        Path file = folder.resolve("figures.json");
        dialogs.file = Optional.of(file);
        MenuButton menu = find("take-away", MenuButton.class);
        FxThread.run(() -> menu.getItems().get(1).fire());
        Label sentence = find("notice-sentence", Label.class);
        FxThread.until("it is written", () -> sentence.getText().startsWith("Written: "));
        JsonNode json = new ObjectMapper().readTree(Files.readAllBytes(file));
        JsonNode expected = new ObjectMapper()
                .readTree(TraceQuantities.DOCUMENT.json(
                        TraceStudy.run(ScenarioReader.builtIn().scenario(), TraceOptions.defaults(), Progress.NONE)));
        assertEquals(expected.get("absorbed_power_W"), json.get("absorbed_power_W"));
        assertEquals(expected.get("peak_flux_W_m2"), json.get("peak_flux_W_m2"));
    }

    @Test
    void patternsCanBeTakenAway() throws Exception {
        Path file = folder.resolve("patterns.pdf");
        dialogs.file = Optional.of(file);
        MenuButton menu = find("take-away", MenuButton.class);
        FxThread.run(() -> menu.getItems().stream()
                .filter(item -> "take-away-patterns-pdf".equals(item.getId()))
                .forEach(MenuItem::fire));
        Label sentence = find("notice-sentence", Label.class);
        FxThread.until("it is written", () -> sentence.getText().startsWith("Written: "));
        CutPlan plan =
                CookerStudy.cut(ScenarioReader.builtIn(), UnitSystem.METRIC, TraceOptions.defaults(), Progress.NONE);
        assertArrayEquals(
                CutFiles.of(plan, Paper.A4, UnitSystem.METRIC).pdf().get(),
                Files.readAllBytes(file),
                "as cut writes it");
    }

    @Test
    void keysPullTheDrawerOpenAndGoRound() {
        press(KeyCode.F2);
        assertTrue(get(() -> window.workbench().drawerOpenProperty().get()));
        FxThread.run(() -> window.scene().lookup("#answer-strip").requestFocus());
        press(KeyCode.F6);
        Node first = get(() -> window.scene().getFocusOwner());
        press(KeyCode.F6);
        Node second = get(() -> window.scene().getFocusOwner());
        assertFalse(first == second, "the keyboard stays in " + first);
        press(KeyCode.F2);
        assertFalse(get(() -> window.workbench().drawerOpenProperty().get()));
    }

    /** Arrow keys choose among the two switches without pressing them. */
    @Test
    void arrowKeysSwitchTheUnits() {
        FxThread.run(() -> window.scene().lookup("#units-metric").requestFocus());
        press(KeyCode.RIGHT);
        assertEquals(
                UnitSystem.INCH, get(() -> window.settings().unitsProperty().get()));
        press(KeyCode.LEFT);
        assertEquals(
                UnitSystem.METRIC, get(() -> window.settings().unitsProperty().get()));
        click("units-metric");
        assertTrue(get(() -> ((ToggleButton) window.scene().lookup("#units-metric")).isSelected()));
    }

    /** Scenarios with many and long words, in the smallest window. */
    @ParameterizedTest
    @ValueSource(strings = {"school-yard", "beekeeper-wax", "lake-hut-evening"})
    void noWordIsCutShortInEitherUnitsOrColours(String name) {
        FxThread.run(() -> window.files().open(Path.of("..", "scenarios", name + ".yaml")));
        FxThread.until(
                name + " lies open",
                () -> window.document().fileProperty().get().isPresent());
        awaitStudies();
        for (UnitSystem system : UnitSystem.values()) {
            click(system == UnitSystem.INCH ? "units-inch" : "units-metric");
            click("dark");
            assertEquals(List.of(), get(() -> Looking.cut(window.workbench())), system.toString());
        }
        press(KeyCode.F2);
        assertEquals(List.of(), get(() -> Looking.cut(window.workbench())), "with the drawer open");
        assertEquals(
                UnitSystem.INCH, get(() -> window.settings().unitsProperty().get()));
    }

    /** The smallest window with all that can be in it: the drawer, a kept design and one that differs, as the command line asks. */
    @Test
    void aDesignKeptAtTheStartStandsBesideTheChangedOne() throws Exception {
        Arguments arguments = Arguments.parse(List.of("--keep", "--drawer", "--change", "stand.pull-back=8 cm"));
        StartupActions opening = get(() -> {
            StartupActions begun = new StartupActions(window, arguments);
            begun.begin();
            return begun;
        });
        FxThread.until("it is kept", opening::isDone);
        awaitAnswer();
        FxThread.until(
                "they are paired", () -> window.beside().stateProperty().get().settled());
        awaitStudies();
        var pair = get(() -> window.beside().stateProperty().get()).pair();
        assertEquals(0, pair.kept().orElseThrow().trace().scenario().stand().pullBackMetres());
        assertEquals(0.08, pair.now().orElseThrow().trace().scenario().stand().pullBackMetres(), 1e-12);
        assertTrue(get(() -> window.workbench().drawerOpenProperty().get()));
        for (UnitSystem system : UnitSystem.values()) {
            FxThread.run(() -> window.settings().unitsProperty().set(system));
            FxThread.settle();
            assertEquals(List.of(), get(() -> Looking.cut(window.workbench())), system.toString());
        }
        assertEquals(List.of(), get(this::withoutCaption));
        press(KeyCode.F2);
        assertEquals(List.of(), get(() -> Looking.cut(window.workbench())), "without the drawer");
    }

    /** What can be pressed or moved and says nothing when it is pointed at. */
    private List<String> withoutCaption() {
        return Looking.all(window.workbench()).stream()
                .filter(node -> (node instanceof ButtonBase && !(node instanceof RadioButton))
                        || node instanceof ChoiceBox
                        || node instanceof ComboBoxBase
                        || node instanceof Slider
                        || node instanceof TextField)
                .map(Control.class::cast)
                .filter(control -> control.getTooltip() == null
                        || control.getTooltip().getText().isBlank())
                .map(Control::toString)
                .toList();
    }

    private void awaitStudies() {
        FxThread.until("the studies are done", () -> {
            var studies = window.live().studiesProperty().get();
            var wanted = window.document().readProperty().get().scenario();
            return studies.timesOf(wanted).isPresent() && studies.panOf(wanted).isPresent();
        });
    }
}
