package simmerpoint.viewer.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.application.Platform;
import javafx.beans.property.SimpleObjectProperty;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.VBox;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.compare.ComparedRow;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.FxThread;
import simmerpoint.viewer.Looking;
import simmerpoint.viewer.ScriptedAsks;
import simmerpoint.viewer.dialog.FileExport;
import simmerpoint.viewer.document.ScenarioDocument;
import simmerpoint.viewer.live.LiveResults;
import simmerpoint.viewer.theme.Theme;

/** Keep, compare, swap, go back and drop in a window, with the answers traced in the background as they are. */
class ComparisonWindowTest {
    private static final TraceOptions FEW = TraceOptions.defaults().withRays(1 << 13);

    @TempDir
    Path folder;

    private final ScriptedAsks asks = new ScriptedAsks();
    private final SimpleObjectProperty<UnitSystem> units = new SimpleObjectProperty<>(UnitSystem.METRIC);
    private final SimpleObjectProperty<Theme> theme = new SimpleObjectProperty<>(Theme.LIGHT);
    private ScenarioDocument document;
    private LiveResults live;
    private ComparisonModel model;
    private VBox root;
    private Stage stage;

    @BeforeEach
    void open() {
        FxThread.run(() -> {
            document = new ScenarioDocument();
            live = new LiveResults(FEW, Platform::runLater);
            model = new ComparisonModel(document, live.stateProperty(), FEW, Platform::runLater);
            FileExport export = new FileExport(asks, Runnable::run, Runnable::run, text -> {});
            ComparisonPane pane = new ComparisonPane(model, units, theme, export);
            VBox.setVgrow(pane, javafx.scene.layout.Priority.ALWAYS);
            root = new VBox(new KeepButton(model, live.stateProperty()), pane);
            Scene scene = new Scene(root, 984, 260);
            Theme.LIGHT.applyTo(scene);
            stage = new Stage();
            stage.setScene(scene);
            stage.show();
            stage.requestFocus();
            document.readProperty().addListener((value, before, now) -> live.show(now.scenario()));
            live.show(document.readProperty().get().scenario());
        });
        FxThread.until(
                "light is there",
                () -> live.stateProperty().get() != null
                        && live.stateProperty().get().settled());
        FxThread.settle();
    }

    @AfterEach
    void close() {
        FxThread.run(() -> {
            stage.close();
            model.close();
            live.close();
        });
    }

    private void click(String id) {
        Robot robot = FxThread.get(Robot::new);
        Point2D middle = FxThread.get(() -> {
            Node node = root.lookup("#" + id);
            return node.localToScreen(
                    node.getLayoutBounds().getWidth() / 2,
                    node.getLayoutBounds().getHeight() / 2);
        });
        FxThread.run(() -> {
            robot.mouseMove(middle);
            robot.mouseClick(MouseButton.PRIMARY);
        });
        FxThread.settle();
    }

    private double pullBack() {
        return FxThread.get(
                () -> document.readProperty().get().scenario().stand().pullBackMetres());
    }

    private String sentence() {
        return FxThread.get(() -> ((Label) root.lookup("#beside-sentence")).getText());
    }

    private void keepAndPull() {
        click("keep");
        assertTrue(FxThread.get(() -> model.stateProperty().get().isKept()));
        FxThread.run(() -> document.change(Map.of("stand.pull-back", "12 cm")));
        FxThread.until(
                "both are compared",
                () -> model.stateProperty().get().paired()
                        && !model.stateProperty().get().differing().isEmpty());
        FxThread.settle();
    }

    @Test
    void whatIsKeptIsHeldAgainstWhatBecomesOfIt() throws Exception {
        keepAndPull();
        assertTrue(sentence().startsWith("Best is the kept design with "), sentence());
        assertTrue(sentence().contains("; the current one costs "), sentence());
        for (UnitSystem system : UnitSystem.values()) {
            List<String> cut = FxThread.get(() -> {
                units.set(system);
                root.getScene().snapshot(null);
                // What is scrolled out of sight is not cut.
                return Looking.cut(root).stream()
                        .filter(word -> !word.startsWith("outside"))
                        .toList();
            });
            assertEquals(List.of(), cut);
        }
        asks.file = Optional.of(folder.resolve("both.csv"));
        FxThread.run(() ->
                ((MenuButton) root.lookup("#beside-save")).getItems().get(1).fire());
        List<String> lines = Files.readAllLines(folder.resolve("both.csv"), StandardCharsets.UTF_8).stream()
                .filter(line -> !line.startsWith("#"))
                .toList();
        assertEquals(3, lines.size());
        assertTrue(lines.get(1).startsWith("1," + PairFigures.KEPT), lines.get(1));
        // All that the command line's comparison has, how far the sun may drift too.
        int drift = List.of(lines.get(0).split(",", -1)).indexOf("aim_again_s");
        assertTrue(drift > 0, lines.get(0));
        for (String line : lines.subList(1, 3)) {
            String[] cells = line.split(",", -1);
            assertTrue(Double.parseDouble(cells[drift]) > 0, line);
        }
        PairFigures figures =
                FxThread.get(() -> model.stateProperty().get().figures().orElseThrow());
        ComparedRow whole = figures.comparison(FEW).best();
        assertEquals(figures.comparison().best().useful(), whole.useful());
        Estimate quick = figures.comparison().rows().get(1).difference();
        Estimate withLuck = figures.comparison(FEW).rows().get(1).difference();
        assertEquals(quick.value(), withLuck.value());
        // Only the command's comparison builds both dishes anew and adds the luck of their gluing.
        assertTrue(withLuck.standardError() >= quick.standardError(), withLuck + " against " + quick);
    }

    /** As wide as beside an open drawer in the smallest window, where four columns do not fit. */
    @Test
    void inLittleWidthNothingIsCutAndTheMapsAreEquallyLarge() {
        keepAndPull();
        FxThread.run(() -> stage.setWidth(607));
        FxThread.settle();
        for (UnitSystem system : UnitSystem.values()) {
            FxThread.run(() -> units.set(system));
            FxThread.settle();
            List<String> cut = FxThread.get(() -> Looking.cut(root));
            assertEquals(
                    List.of(),
                    cut.stream().filter(word -> !word.startsWith("outside")).toList());
            Bounds left = FxThread.get(() -> root.lookup("#kept-map").getLayoutBounds());
            Bounds right = FxThread.get(() -> root.lookup("#now-map").getLayoutBounds());
            assertEquals(left, right);
        }
    }

    @Test
    void whileThePairIsTracedTheTableKeepsItsLines() {
        keepAndPull();
        double before = FxThread.get(
                () -> root.lookup("#beside-table").getLayoutBounds().getHeight());
        double after = FxThread.get(() -> {
            document.change(Map.of("stand.pull-back", "11 cm"));
            root.applyCss();
            root.layout();
            return root.lookup("#beside-table").getLayoutBounds().getHeight();
        });
        assertEquals(before, after);
    }

    @Test
    void goingBackIsAChangeThatCanBeUndone() {
        keepAndPull();
        click("go-back");
        assertEquals(0, pullBack());
        FxThread.until(
                "the same pair is seen to be the same",
                () -> model.stateProperty().get().paired()
                        && model.stateProperty().get().differing().isEmpty());
        assertTrue(sentence().startsWith("Both are the same."), sentence());
        FxThread.run(document::undo);
        assertEquals(0.12, pullBack(), 1e-12);
    }

    @Test
    void swapChangesPlacesAndDropLetsGo() {
        keepAndPull();
        click("swap");
        assertEquals(0, pullBack());
        assertEquals(
                0.12,
                FxThread.get(() -> model.stateProperty()
                        .get()
                        .kept()
                        .orElseThrow()
                        .read()
                        .scenario()
                        .stand()
                        .pullBackMetres()),
                1e-12);
        FxThread.until(
                "the pair has changed places", () -> model.stateProperty().get().paired());
        assertTrue(sentence().startsWith("Best is the current one with "), sentence());
        click("drop");
        assertFalse(FxThread.get(() -> model.stateProperty().get().isKept()));
    }
}
