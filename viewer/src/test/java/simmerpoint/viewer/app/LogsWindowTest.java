package simmerpoint.viewer.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.input.TransferMode;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.FxThread;
import simmerpoint.viewer.Looking;
import simmerpoint.viewer.ScriptedAsks;
import simmerpoint.viewer.document.OpenedFile;
import simmerpoint.viewer.document.RecentFiles;
import simmerpoint.viewer.document.ScenarioDocument;
import simmerpoint.viewer.theme.Theme;

/** Logs of the built cooker, opened in the window and dropped on it. */
@Tag("slow")
class LogsWindowTest {
    private static final Path SCENARIOS = Path.of("..", "scenarios");
    private static final Path MONDAY = SCENARIOS.resolve("garden-logs").resolve("monday.csv");
    private static final Path TUESDAY = SCENARIOS.resolve("garden-logs").resolve("tuesday-pan-out.csv");

    @TempDir
    Path folder;

    private final ScriptedAsks asks = new ScriptedAsks();
    private ViewerWindow window;
    private Stage stage;

    @BeforeEach
    void open() throws Exception {
        OpenedFile garden = OpenedFile.read(SCENARIOS.resolve("garden-strips.yaml"));
        stage = FxThread.get(() -> {
            window = new ViewerWindow(
                    new ScenarioDocument(garden),
                    RecentFiles.forgotten(),
                    new DisplaySettings(UnitSystem.METRIC, Theme.LIGHT),
                    asks,
                    new Arguments.Size(1024, 700),
                    TraceOptions.defaults().withRays(1 << 12));
            window.begin();
            Stage s = new Stage();
            s.setScene(window.scene());
            s.show();
            s.requestFocus();
            return s;
        });
    }

    @AfterEach
    void close() {
        FxThread.run(() -> {
            stage.close();
            window.close();
        });
    }

    private Node node(String id) {
        return Platform.isFxApplicationThread()
                ? window.scene().lookup("#" + id)
                : FxThread.get(() -> window.scene().lookup("#" + id));
    }

    private void ask() {
        FxThread.run(() -> {
            window.see(View.UNDERSTAND);
            window.views().choose(View.UNDERSTAND, "trial");
        });
        FxThread.settle();
    }

    private boolean charts(int count) {
        return Looking.all(window.workbench()).stream()
                        .filter(node -> "trial-chart".equals(node.getId()) && Looking.seen(node))
                        .count()
                == count;
    }

    private boolean says(String words) {
        return Looking.all(window.workbench()).stream()
                .anyMatch(node -> node instanceof Labeled each
                        && Looking.seen(node)
                        && each.getText() != null
                        && each.getText().replace('\u00a0', ' ').startsWith(words));
    }

    /** A file dragged from outside, dropped in the middle of the views; a part of the window plays the folder that it comes from. */
    private void drop(Path... files) {
        Node from = node("answer-strip");
        Node to = node("view-place");
        FxThread.run(() -> from.setOnDragDetected(event -> {
            ClipboardContent content = new ClipboardContent();
            content.putFiles(List.of(files).stream().map(Path::toFile).toList());
            from.startDragAndDrop(TransferMode.COPY).setContent(content);
            event.consume();
        }));
        Robot robot = FxThread.get(Robot::new);
        Bounds start = FxThread.get(() -> from.localToScreen(from.getLayoutBounds()));
        Bounds end = FxThread.get(() -> to.localToScreen(to.getLayoutBounds()));
        FxThread.run(() -> {
            robot.mouseMove(start.getCenterX(), start.getCenterY());
            robot.mousePress(MouseButton.PRIMARY);
        });
        for (int k = 1; k <= 8; k++) {
            double share = k / 8.0;
            FxThread.run(() -> robot.mouseMove(
                    start.getCenterX() + share * (end.getCenterX() - start.getCenterX()),
                    start.getCenterY() + share * (end.getCenterY() - start.getCenterY())));
            FxThread.settle();
        }
        FxThread.run(() -> robot.mouseRelease(MouseButton.PRIMARY));
        FxThread.settle();
    }

    @Test
    void logsAreOpenedByTheKeyboardAndShownBesideTheModel() {
        ask();
        assertTrue(FxThread.get(() -> !node("trial-start").isVisible()), "nothing can be worked out without a log");
        asks.files = List.of(MONDAY, TUESDAY);
        FxThread.run(() -> node("trial-open").requestFocus());
        FxThread.run(() -> new Robot().keyType(KeyCode.SPACE));
        FxThread.until("both logs are drawn", () -> charts(2));
        assertEquals(List.of("Open logs"), asks.asked);
        assertTrue(FxThread.get(() -> says("3 l of water came to 98 °C; expected: it boils in ")));
        assertTrue(FxThread.get(() -> says("likeliest flaw")));
        assertEquals(List.of(), FxThread.get(() -> Looking.cut(window.workbench())));
        FxThread.run(() -> window.settings().unitsProperty().set(UnitSystem.INCH));
        assertTrue(FxThread.get(() -> says("3.2 quarts of water came to 208 °F")));
    }

    @Test
    void aClassIsAFolder() {
        ask();
        asks.file = Optional.of(SCENARIOS.resolve("garden-class"));
        FxThread.run(((Button) node("trial-open-class"))::fire);
        FxThread.until("the ranks are drawn", () -> charts(1));
        assertTrue(FxThread.get(() -> says("5 cookers; the best is ")));
        assertFalse(FxThread.get(() -> says("Open the cooker as built")));
    }

    @Test
    void aLogIsDroppedOnAnyView() {
        drop(MONDAY);
        FxThread.until("the log is drawn", () -> charts(1));
        assertTrue(node("understand-trial").isVisible());
    }

    @Test
    void aBadLogThatIsDroppedIsNamedWithItsLine() throws Exception {
        Path log = folder.resolve("log.csv");
        Files.writeString(log, "time_min,water_C\n0,20\n10,F\n");
        drop(log);
        FxThread.until(
                "it is refused",
                () -> node("trial-lead") != null
                        && ((Label) node("trial-lead")).getText().startsWith(log + ", line 3: water_C has 'F'"));
        assertTrue(FxThread.get(() -> charts(0)));
        Files.copy(MONDAY, log, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        FxThread.run(((Button) node("trial-start"))::fire);
        FxThread.until("the mended log is drawn", () -> charts(1));
    }

    @Test
    void aScenarioThatIsDroppedIsOpened() {
        drop(SCENARIOS.resolve("school-yard.yaml"));
        FxThread.until(
                "it is open", () -> window.document().titleProperty().get().startsWith("School yard"));
    }

    @Test
    void theCookerAsBuiltIsOpenedAndUndoBringsThePlannedOneBack() {
        ask();
        asks.files = List.of(MONDAY);
        FxThread.run(((Button) node("trial-open"))::fire);
        FxThread.until("the log is drawn", () -> charts(1));
        double planned = reflectance();
        FxThread.run(((Button) node("trial-open-built"))::fire);
        assertTrue(reflectance() < planned, reflectance() + " of " + planned);
        assertEquals(
                Optional.empty(),
                FxThread.get(() -> window.document().fileProperty().get()));
        assertTrue(FxThread.get(() -> says("This is for the design before its last change.")));
        assertTrue(FxThread.get(() -> says("This is the cooker as its logs show it.")));
        FxThread.run(window.document()::undo);
        assertEquals(planned, reflectance());
    }

    private double reflectance() {
        return FxThread.get(
                () -> window.document().readProperty().get().scenario().mirror().reflectance());
    }
}
