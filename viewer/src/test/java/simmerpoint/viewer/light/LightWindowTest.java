package simmerpoint.viewer.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.FxThread;
import simmerpoint.viewer.theme.Theme;

/** The person in the light, moved by mouse and keys. */
class LightWindowTest {
    private final LightChoice choice = new LightChoice();
    private final Robot robot = FxThread.get(Robot::new);
    private LightPane pane;
    private LightView view;
    private Stage stage;

    @BeforeEach
    void open() {
        LightFound found = LightScenes.found();
        FxThread.run(() -> {
            pane = new LightPane(found, choice, UnitSystem.METRIC, Theme.LIGHT);
            view = (LightView) pane.lookup("#burns-light");
            ScrollPane room = new ScrollPane(pane);
            room.setFitToWidth(true);
            Scene scene = new Scene(room, 760, 640);
            Theme.LIGHT.applyTo(scene);
            stage = new Stage();
            stage.setScene(scene);
            stage.show();
            stage.requestFocus();
        });
        FxThread.settle();
    }

    @AfterEach
    void close() {
        FxThread.run(() -> stage.close());
    }

    private String words() {
        return FxThread.get(() -> ((Label) pane.lookup("#burns-person")).getText());
    }

    private Point2D person() {
        return FxThread.get(() -> view.localToScreen(view.person()));
    }

    private void press(Point2D at) {
        FxThread.run(() -> robot.mouseMove(at));
        FxThread.settle();
        FxThread.run(() -> robot.mousePress(MouseButton.PRIMARY));
        FxThread.settle();
    }

    private void move(Point2D from, Point2D to) {
        for (int k = 1; k <= 5; k++) {
            Point2D step = from.interpolate(to, k / 5.0);
            FxThread.run(() -> robot.mouseMove(step));
            FxThread.settle();
        }
    }

    private void letGo() {
        FxThread.run(() -> robot.mouseRelease(MouseButton.PRIMARY));
        FxThread.settle();
    }

    private void type(KeyCode code) {
        FxThread.run(() -> robot.keyType(code));
        FxThread.settle();
    }

    @Test
    void aDragMovesThePersonUnderTheMouseAndTheWordsFollow() {
        String before = words();
        Point2D from = person();
        double perMetre = FxThread.get(() -> view.pixelsPerMetre());
        double safe = FxThread.get(() -> view.state().person().towardsSun());
        press(from);
        move(from, from.add(-150, 0));
        letGo();
        assertEquals(safe - 150 / perMetre, choice.personProperty().get().orElseThrow(), 2 / perMetre);
        assertEquals(from.getX() - 150, person().getX(), 1.5);
        assertEquals(perMetre, FxThread.get(() -> view.pixelsPerMetre()), 1e-9, "the frame stays");
        assertNotEquals(before, words());
    }

    @Test
    void itGoesNoFartherThanThePictureAndEscapePutsItBack() {
        Point2D from = person();
        press(from);
        move(from, from.add(2000, 0));
        double right = FxThread.get(() -> view.getWidth());
        assertTrue(FxThread.get(() -> view.person().getX()) < right);
        type(KeyCode.ESCAPE);
        assertEquals(Optional.empty(), choice.personProperty().get());
        letGo();
        assertEquals(from.getX(), person().getX(), 1e-6);
    }

    @Test
    void arrowsMoveItAndHomePutsItBack() {
        FxThread.run(() -> view.requestFocus());
        double safe = FxThread.get(() -> view.state().person().towardsSun());
        type(KeyCode.LEFT);
        type(KeyCode.LEFT);
        type(KeyCode.RIGHT);
        assertEquals(safe - 0.05, choice.personProperty().get().orElseThrow(), 1e-9);
        type(KeyCode.HOME);
        assertEquals(Optional.empty(), choice.personProperty().get());
    }

    @Test
    void whatIsChosenOutlivesTheView() {
        FxThread.run(() -> {
            choice.personProperty().set(Optional.of(1.0));
            ((ToggleButton) pane.lookup("#burns-taken")).fire();
            ((ToggleButton) pane.lookup("#burns-shown")).fire();
        });
        assertFalse(choice.panTakenProperty().get());
        assertFalse(choice.onPageProperty().get());
        LightView next = FxThread.get(() -> (LightView)
                new LightPane(LightScenes.found(), choice, UnitSystem.INCH, Theme.DARK).lookup("#burns-light"));
        assertEquals(1, FxThread.get(() -> next.state().person().towardsSun()), 0);
        assertFalse(FxThread.get(() -> next.state().panTaken()));
    }
}
