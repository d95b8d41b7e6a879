package simmerpoint.viewer.build;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.application.Platform;
import javafx.beans.property.SimpleObjectProperty;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.drawing.output.Paper;
import simmerpoint.report.CutFiles;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.FxThread;
import simmerpoint.viewer.ScriptedAsks;
import simmerpoint.viewer.comparison.ComparisonModel;
import simmerpoint.viewer.dialog.FileExport;
import simmerpoint.viewer.document.Edit;
import simmerpoint.viewer.document.ScenarioDocument;
import simmerpoint.viewer.live.LiveResults;
import simmerpoint.viewer.theme.Theme;
import simmerpoint.viewer.workspace.Workspace;
import simmerpoint.workshop.CookerStudy;
import simmerpoint.workshop.CutPlan;

/** The view for whoever builds, in a window, by mouse and keys. */
@Tag("slow")
class BuildWindowTest {
    private static final TraceOptions FEW = TraceOptions.defaults().withRays(1 << 12);

    @TempDir
    Path folder;

    private final ScenarioDocument document = new ScenarioDocument();
    private final ScriptedAsks asks = new ScriptedAsks();
    private final List<String> told = new ArrayList<>();
    private LiveResults live;
    private ComparisonModel beside;
    private BuildView view;
    private Stage stage;

    @BeforeEach
    void open() {
        FxThread.run(() -> {
            live = new LiveResults(FEW, Platform::runLater);
            beside = new ComparisonModel(document, live.stateProperty(), FEW, Platform::runLater);
            view = new BuildView(
                    new Workspace(
                            document,
                            live.stateProperty(),
                            live.studiesProperty(),
                            new SimpleObjectProperty<>(),
                            new SimpleObjectProperty<>(UnitSystem.METRIC),
                            new SimpleObjectProperty<>(Theme.LIGHT),
                            new FileExport(asks, Runnable::run, Runnable::run, told::add),
                            asks,
                            FEW,
                            Platform::runLater,
                            told::add),
                    beside);
            Scene scene = new Scene(view, 984, 520);
            Theme.LIGHT.applyTo(scene);
            stage = new Stage();
            stage.setScene(scene);
            stage.show();
            stage.requestFocus();
            document.readProperty().addListener((value, before, now) -> live.show(now.scenario()));
            live.show(document.readProperty().get().scenario());
        });
        FxThread.until("the plan is there", () -> view.lookup("#cut-dish") != null);
        FxThread.settle();
    }

    @AfterEach
    void close() {
        FxThread.run(() -> {
            stage.close();
            view.close();
            beside.close();
            live.close();
        });
    }

    private Node node(String id) {
        return FxThread.get(() -> view.lookup("#" + id));
    }

    private String words() {
        return ((Label) node("cut-piece")).getText();
    }

    private void click(String id) {
        FxThread.settle();
        Node node = node(id);
        FxThread.run(() -> {
            Bounds bounds = node.localToScreen(node.getLayoutBounds());
            Robot robot = new Robot();
            robot.mouseMove(bounds.getCenterX(), bounds.getCenterY());
            robot.mouseClick(MouseButton.PRIMARY);
        });
        FxThread.settle();
    }

    /** The rim's panels are the largest; there are as many as sectors: 24. */
    @Test
    void aPanelUnderTheMouseIsNamedWithItsPiece() {
        Node map = node("cut-dish");
        FxThread.run(() -> {
            Bounds bounds = map.localToScreen(map.getLayoutBounds());
            new Robot().mouseMove(bounds.getCenterX() + 20, bounds.getMinY() + 50);
        });
        FxThread.settle();
        assertTrue(words().startsWith("Panel F, 24 pieces, "), words());
        FxThread.run(() -> new Robot().mouseMove(5, 5));
        FxThread.settle();
        assertTrue(words().startsWith("Point at a piece"), words());
    }

    @Test
    void arrowKeysGoThroughThePieces() {
        Node panels = node("cut-panels");
        FxThread.run(panels::requestFocus);
        FxThread.run(() -> new Robot().keyType(KeyCode.RIGHT));
        FxThread.settle();
        String first = words();
        assertTrue(first.startsWith("Panel A, 24 pieces, "), first);
        FxThread.run(() -> new Robot().keyType(KeyCode.LEFT));
        FxThread.settle();
        assertTrue(words().startsWith("Panel F, 24 pieces, "), words());
    }

    @Test
    void patternsAreTakenAwayAsTheCommandWritesThem() throws Exception {
        asks.file = Optional.of(folder.resolve("patterns.pdf"));
        MenuButton menu = (MenuButton) node("cut-take-away");
        assertTrue(
                menu.getItems().get(0).getText().contains("(PDF)"),
                menu.getItems().toString());
        FxThread.run(() -> menu.getItems().get(0).fire());
        CutPlan plan =
                CookerStudy.cut(ScenarioReader.builtIn(), UnitSystem.METRIC, TraceOptions.defaults(), Progress.NONE);
        assertArrayEquals(
                CutFiles.of(plan, Paper.A4, UnitSystem.METRIC).pdf().get(),
                Files.readAllBytes(folder.resolve("patterns.pdf")),
                told.toString());
    }

    @Test
    void aDishThatCannotBeCutSaysWhy() {
        FxThread.run(
                () -> document.apply(Edit.drop("mirror.panel-tilt").then(Edit.type("dish.surface.cut", "smooth"))));
        FxThread.until(
                "it is said",
                () -> ((Label) view.lookup("#cut-lead")).getText().startsWith("A smooth dish has no panels to cut"));
    }

    @Test
    void severalKeptDesignsAreComparedTogether() {
        click("build-compare");
        FxThread.until("light is there", beside::canKeep);
        FxThread.settle();
        click("keep");
        FxThread.run(() -> document.change(Map.of("stand.pull-back", "12 cm")));
        FxThread.until("light is there", beside::canKeep);
        FxThread.settle();
        click("keep");
        FxThread.run(() -> document.change(Map.of("stand.pull-back", "20 cm")));
        FxThread.until("light is there", beside::canKeep);
        FxThread.settle();
        assertEquals("Kept 1: pull-back 0\u00a0cm", ((ToggleButton) node("kept-1")).getText());
        assertTrue(((ToggleButton) node("kept-2")).isSelected(), "the last one kept is held against the design");
        click("kept-1");
        FxThread.until(
                "the first one is held against the design",
                () -> beside.stateProperty()
                        .get()
                        .pair()
                        .kept()
                        .filter(p -> p.trace().scenario().stand().pullBackMetres() == 0)
                        .isPresent());
        click("compare-together");
        FxThread.until("all are compared", () -> view.lookup("#compare-chart") != null);
    }

    @Test
    void pricesThatAreFilledInGiveTheCost() {
        click("build-cost");
        FxThread.run(() -> document.change(
                Map.of("build.prices.currency", "EUR", "build.prices.panel-sheet", "9", "build.prices.film", "35")));
        FxThread.until(
                "the cost is there",
                () -> view.lookupAll(".answer-value").stream()
                        .anyMatch(each ->
                                each instanceof Label label && label.getText().endsWith("\u00a0EUR")));
    }
}
