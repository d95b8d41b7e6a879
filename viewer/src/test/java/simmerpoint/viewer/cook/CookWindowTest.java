package simmerpoint.viewer.cook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import javafx.application.Platform;
import javafx.beans.property.SimpleObjectProperty;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.FxThread;
import simmerpoint.viewer.ScriptedAsks;
import simmerpoint.viewer.dialog.FileExport;
import simmerpoint.viewer.document.ScenarioDocument;
import simmerpoint.viewer.live.LiveResults;
import simmerpoint.viewer.theme.Theme;
import simmerpoint.viewer.workspace.Workspace;

/** Countdown and day in a window, moved by the mouse. */
class CookWindowTest {
    private static final TraceOptions FEW = TraceOptions.defaults().withRays(1 << 12);

    private final ScenarioDocument document = new ScenarioDocument();
    private LiveResults live;
    private TimePane pane;
    private Stage stage;

    @BeforeEach
    void open() {
        FxThread.run(() -> {
            document.change(Map.of(
                    "place.latitude", "47\u00b0 N",
                    "place.longitude", "9\u00b0 E",
                    "place.zone", "UTC+1"));
            live = new LiveResults(FEW, Platform::runLater);
            ScriptedAsks asks = new ScriptedAsks();
            Workspace work = new Workspace(
                    document,
                    live.stateProperty(),
                    live.studiesProperty(),
                    new SimpleObjectProperty<>(),
                    new SimpleObjectProperty<>(UnitSystem.METRIC),
                    new SimpleObjectProperty<>(Theme.LIGHT),
                    new FileExport(asks, Runnable::run, Runnable::run, text -> {}),
                    asks,
                    FEW,
                    Platform::runLater,
                    text -> {});
            pane = new TimePane(work);
            Scene scene = new Scene(pane, 330, 640);
            Theme.LIGHT.applyTo(scene);
            stage = new Stage();
            stage.setScene(scene);
            stage.show();
            document.readProperty().addListener((value, before, now) -> live.show(now.scenario()));
            live.show(document.readProperty().get().scenario());
        });
        FxThread.until(
                "it is known when to aim again",
                () -> live.studiesProperty()
                        .get()
                        .timesOf(document.readProperty().get().scenario())
                        .isPresent());
        FxThread.settle();
    }

    @AfterEach
    void close() {
        FxThread.run(() -> {
            stage.close();
            pane.close();
            live.close();
        });
    }

    private String text(String id) {
        return FxThread.get(() -> shown(id));
    }

    /** On the FX thread. */
    private String shown(String id) {
        return ((Label) pane.lookup("#" + id)).getText();
    }

    private void click(String id, double share) {
        FxThread.settle();
        FxThread.run(() -> {
            Node node = pane.lookup("#" + id);
            Bounds bounds = node.localToScreen(node.getLayoutBounds());
            Robot robot = new Robot();
            robot.mouseMove(bounds.getMinX() + share * bounds.getWidth(), bounds.getCenterY());
            robot.mouseClick(MouseButton.PRIMARY);
        });
        FxThread.settle();
    }

    @Test
    void theClockRunsFromThePressAndStops() {
        String standing = text("countdown-clock");
        assertTrue(standing.matches("[0-9]+:[0-9]{2}"), standing);
        click("countdown-start", 0.5);
        FxThread.until("a second has gone", () -> !shown("countdown-clock").equals(standing));
        click("countdown-stop", 0.5);
        assertEquals(standing, text("countdown-clock"));
    }

    @Test
    void aClickOnTheDaySetsTheHour() {
        FxThread.run(() -> document.change(Map.of("when.date", "2026-06-21", "when.time", "12:00")));
        FxThread.run(() -> {
            document.reset("sun.elevation");
            document.reset("sun.beam");
        });
        FxThread.until("the day is known", () -> shown("day-words").startsWith("Under a clear sky it "));
        double noon = FxThread.get(
                () -> document.readProperty().get().scenario().sun().elevationRadians());
        click("day-strip", 0.2);
        double morning = FxThread.get(
                () -> document.readProperty().get().scenario().sun().elevationRadians());
        assertTrue(morning < noon - 0.3, noon + " to " + morning);
        int hour = FxThread.get(() -> document.readProperty()
                .get()
                .scenario()
                .site()
                .orElseThrow()
                .when()
                .getHour());
        assertTrue(hour >= 5 && hour <= 8, "hour " + hour);
        FxThread.run(document::undo);
        assertEquals(
                noon,
                FxThread.get(
                        () -> document.readProperty().get().scenario().sun().elevationRadians()),
                1e-12);
    }
}
