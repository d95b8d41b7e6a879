package simmerpoint.viewer.yard;

import java.util.Map;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Point2D;
import javafx.scene.Scene;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.HBox;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.FxThread;
import simmerpoint.viewer.document.ScenarioDocument;
import simmerpoint.viewer.light.LightChoice;
import simmerpoint.viewer.light.LightOverlay;
import simmerpoint.viewer.live.LiveResults;
import simmerpoint.viewer.live.PanelResults;
import simmerpoint.viewer.theme.Theme;

/** A yard in a window without a screen, for tests. */
final class Yards implements AutoCloseable {
    final ScenarioDocument document;
    final LiveResults live;
    final SimpleObjectProperty<UnitSystem> units = new SimpleObjectProperty<>(UnitSystem.METRIC);
    final SimpleObjectProperty<Theme> theme = new SimpleObjectProperty<>(Theme.LIGHT);
    final PanelResults panels;
    final LightChoice choice = new LightChoice();
    final LightOverlay overlay;
    final YardView yard;
    private final PanelsPane front;
    private final Stage stage;

    private Yards(ScenarioDocument document, double width, double height, TraceOptions asked) {
        this.document = document;
        live = new LiveResults(asked, Platform::runLater);
        ObservableValue<Scenario> scenario =
                Bindings.createObjectBinding(() -> document.readProperty().get().scenario(), document.readProperty());
        panels = new PanelResults(scenario, TraceOptions.defaults(), Platform::runLater);
        overlay = new LightOverlay(
                document.readProperty(), choice, TraceOptions.defaults().withRays(1 << 15), Platform::runLater);
        yard = new YardView(
                scenario,
                live.stateProperty(),
                panels.stateProperty(),
                new SimpleObjectProperty<>(false),
                units,
                theme,
                new DocumentEdits(document),
                overlay);
        front = new PanelsPane(scenario, live.stateProperty(), panels.stateProperty(), theme, Platform::runLater);
        HBox both = new HBox(yard, front);
        yard.setMinWidth(0.65 * width);
        front.setMinWidth(0.35 * width);
        stage = new Stage();
        stage.setScene(new Scene(both, width, height));
        theme.get().applyTo(stage.getScene());
        theme.addListener((value, before, now) -> now.applyTo(stage.getScene()));
        document.readProperty().addListener((value, before, now) -> live.show(now.scenario()));
        live.show(document.readProperty().get().scenario());
        stage.show();
        stage.requestFocus();
    }

    /** Traced with few rays. */
    static Yards open(double width, double height) {
        return open(width, height, TraceOptions.defaults().withRays(1 << 13));
    }

    static Yards open(double width, double height, TraceOptions asked) {
        Yards yards = FxThread.get(() -> new Yards(new ScenarioDocument(), width, height, asked));
        yards.await();
        return yards;
    }

    /** Whether side view and panels are drawn with the newest there is to know. */
    boolean isDrawn() {
        return yard.drawn() && front.drawn();
    }

    /** Until the drawing knows the scenario in force. */
    void await() {
        FxThread.until("the yard and its panels are drawn", this::isDrawn);
        FxThread.settle();
    }

    /** Middle of a handle on the screen. */
    Point2D onScreen(Handle handle) {
        return FxThread.get(() -> onScreen(yard.handleInScene(handle)));
    }

    Point2D onScreen(Point2D inScene) {
        return new Point2D(
                inScene.getX() + stage.getScene().getX() + stage.getX(),
                inScene.getY() + stage.getScene().getY() + stage.getY());
    }

    /** Takes hold at a point of the screen and moves by (dx, dy) px in so many steps, without letting go. */
    void pull(Point2D from, double dx, double dy, int steps) {
        Robot robot = FxThread.get(Robot::new);
        FxThread.run(() -> robot.mouseMove(from));
        FxThread.settle();
        FxThread.run(() -> robot.mousePress(MouseButton.PRIMARY));
        for (int k = 1; k <= steps; k++) {
            double share = (double) k / steps;
            FxThread.run(() -> robot.mouseMove(from.getX() + share * dx, from.getY() + share * dy));
            FxThread.settle();
        }
    }

    void letGo() {
        FxThread.run(() -> new Robot().mouseRelease(MouseButton.PRIMARY));
        FxThread.settle();
    }

    Scenario scenario() {
        return FxThread.get(() -> document.readProperty().get().scenario());
    }

    Stage stage() {
        return stage;
    }

    @Override
    public void close() {
        FxThread.run(() -> {
            stage.close();
            front.close();
            panels.close();
            overlay.close();
            live.close();
        });
    }

    static Scenario example(Map<String, String> changes) throws ScenarioException {
        return ScenarioReader.builtIn().with(changes).scenario();
    }
}
