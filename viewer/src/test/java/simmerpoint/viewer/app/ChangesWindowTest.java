package simmerpoint.viewer.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.FxThread;
import simmerpoint.viewer.ScriptedAsks;
import simmerpoint.viewer.document.RecentFiles;
import simmerpoint.viewer.document.ScenarioDocument;
import simmerpoint.viewer.document.ShippedScenarios;
import simmerpoint.viewer.theme.Theme;

/** The whole window: views, questions, warnings, files that come with the program; by mouse and keys. */
@Tag("slow")
class ChangesWindowTest {
    private ViewerWindow window;
    private Stage stage;

    @BeforeEach
    void open() {
        stage = FxThread.get(() -> {
            window = new ViewerWindow(
                    new ScenarioDocument(),
                    RecentFiles.forgotten(),
                    new DisplaySettings(UnitSystem.METRIC, Theme.LIGHT),
                    new ScriptedAsks(),
                    new Arguments.Size(1024, 700),
                    TraceOptions.defaults().withRays(1 << 13));
            window.begin();
            Stage s = new Stage();
            s.setScene(window.scene());
            s.show();
            s.requestFocus();
            return s;
        });
        FxThread.settle();
    }

    @AfterEach
    void close() {
        FxThread.run(() -> {
            stage.close();
            window.close();
        });
    }

    private Scenario scenario() {
        return FxThread.get(() -> window.document().readProperty().get().scenario());
    }

    private void click(String id) {
        FxThread.settle();
        Node node = FxThread.get(() -> window.scene().lookup("#" + id));
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

    private boolean seen(String id) {
        return FxThread.get(() -> window.scene().lookup("#" + id) != null);
    }

    @Test
    void mouseAndKeysChangeTheView() {
        assertTrue(seen("cook-view"));
        click("view-build");
        assertTrue(seen("build-view") && !seen("cook-view"));
        press(KeyCode.CONTROL, KeyCode.DIGIT3);
        assertTrue(seen("understand-view"));
        press(KeyCode.CONTROL, KeyCode.DIGIT1);
        assertTrue(seen("cook-view"));
    }

    @Test
    void aQuestionIsAnsweredByAPressAndTakenBackByUndo() {
        press(KeyCode.F2);
        assertTrue(seen("questions"));
        assertFalse(seen("find-key"), "every detail is behind its button");
        click("start-width-narrow");
        assertEquals(0.8, scenario().dish().diameterMetres(), 1e-9);
        press(KeyCode.CONTROL, KeyCode.Z);
        assertEquals(1.2, scenario().dish().diameterMetres(), 1e-9);
        click("every-detail");
        assertTrue(seen("find-key"));
    }

    @Test
    void theSunOfAPlaceBeginsWithAUsualPlaceAndNothingWrong() {
        click("day-other");
        assertEquals(List.of(), FxThread.get(() -> window.document().state().problems()));
        assertTrue(scenario().site().isPresent());
        FxThread.run(() -> window.document().undo());
        assertTrue(scenario().site().isEmpty(), "one step back");
    }

    /** A sun at 1° with 850 W/m² is more than the clearest air lets through. */
    @Test
    void whatACheckFindsOddIsSaidWhileEditing() {
        FxThread.run(() -> window.document().change(Map.of("sun.elevation", "1\u00b0")));
        FxThread.settle();
        Label sentence = (Label) FxThread.get(() -> window.scene().lookup("#notice-sentence"));
        assertTrue(FxThread.get(() -> sentence.getParent().isVisible()), "nothing is said");
        assertTrue(sentence.getText().contains("850 W/m\u00b2 is more than"), sentence.getText());
        assertTrue(sentence.getText().startsWith("With the sun so low"), "no keys: " + sentence.getText());
        FxThread.run(() -> window.document().undo());
        FxThread.settle();
        assertFalse(FxThread.get(() -> sentence.getParent().isVisible()), "it holds no more");
    }

    /** A builder who is told that something is odd must be told what, and not again what was odd before. */
    @Test
    void aWarningNamesWhatItIsAboutAndGoesWhenItHoldsNoMore() {
        FxThread.run(() -> window.files().openNew());
        FxThread.run(() -> window.document().change(Map.of("stand.raise", "-34.5 cm")));
        FxThread.settle();
        Label sentence = (Label) FxThread.get(() -> window.scene().lookup("#notice-sentence"));
        assertTrue(
                sentence.getText().startsWith("Stand, raise: -34.5 cm is more than the width of the pan, 24 cm"),
                sentence.getText());
        assertFalse(sentence.getText().contains("not given"), "not of this change: " + sentence.getText());
        FxThread.run(() -> window.document().undo());
        FxThread.settle();
        assertFalse(FxThread.get(() -> sentence.getParent().isVisible()), "it holds no more: " + sentence.getText());
        assertEquals(
                "Pan, finish: not given; black enamel is assumed.",
                WarningWords.of(List.of("pan.finish: not given; black enamel is assumed")));
    }

    @Test
    void newAndEveryScenarioThatComesAlongCanBeOpened() {
        MenuButton menu = (MenuButton) FxThread.get(() -> window.scene().lookup("#open"));
        fire(menu, "open-new");
        assertEquals("My cooker", scenario().title());
        for (String name : ShippedScenarios.names()) {
            fire(menu, "open-" + name);
            FxThread.until(
                    name + " is open",
                    () -> window.document()
                            .readProperty()
                            .get()
                            .scenario()
                            .title()
                            .equals(ShippedScenarios.title(name).replace('\u2019', '\'')));
        }
    }

    private static void fire(MenuButton menu, String id) {
        FxThread.run(() ->
                menu.getItems().stream().filter(item -> id.equals(item.getId())).forEach(MenuItem::fire));
    }
}
