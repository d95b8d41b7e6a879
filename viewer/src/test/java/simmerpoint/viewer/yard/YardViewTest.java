package simmerpoint.viewer.yard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.robot.Robot;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.Scenario;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.FxThread;

/** Real mouse and keys, without a screen. */
class YardViewTest {
    private static final double MILLIMETRE = 0.001;

    private Yards window;

    @BeforeEach
    void open() {
        window = Yards.open(1000, 560);
    }

    @AfterEach
    void close() {
        window.close();
    }

    private Node node(String id) {
        return FxThread.get(() -> window.stage().getScene().lookup("#" + id));
    }

    private void focus(String id) {
        Node node = node(id);
        FxThread.run(node::requestFocus);
    }

    private double perMetre() {
        return FxThread.get(window.yard::pixelsPerMetre);
    }

    private void press(KeyCode code) {
        FxThread.run(() -> new Robot().keyType(code));
        FxThread.settle();
    }

    /** The pan itself, not its arrows: pulled 60 px along the axis of a sun 50° high. */
    @Test
    void thePanPulledByTheMouseEndsInTheScenario() {
        double perMetre = perMetre();
        Node pan = node("yard-pan");
        Point2D from = FxThread.get(() -> window.onScreen(pan.localToScene(
                pan.getBoundsInLocal().getWidth() / 4, pan.getBoundsInLocal().getHeight() / 2)));
        double elevation = window.scenario().sun().elevationRadians();
        double before = window.scenario().stand().pullBackMetres();
        window.pull(from, Math.rint(60 * Math.cos(elevation)), -Math.rint(60 * Math.sin(elevation)), 12);
        window.letGo();
        double after = window.scenario().stand().pullBackMetres();
        assertEquals(60 / perMetre, after - before, MILLIMETRE + 1 / perMetre);
        assertEquals(0, Math.IEEEremainder(after, MILLIMETRE), 1e-9, "a whole millimetre");
        assertTrue(FxThread.get(() -> window.desk.undoableProperty().get()));
        FxThread.run(window.desk::undo);
        assertEquals(before, window.scenario().stand().pullBackMetres(), 0);
        assertFalse(FxThread.get(() -> window.desk.undoableProperty().get()), "one drag, one step");
    }

    @Test
    void everyHandleMovesItsKey() {
        double perMetre = perMetre();
        Scenario before = window.scenario();
        window.pull(window.onScreen(Handle.RAISE), 0, -30, 4);
        window.letGo();
        assertEquals(30 / perMetre, window.scenario().stand().raiseMetres(), MILLIMETRE);
        window.await();
        perMetre = perMetre();
        window.pull(window.onScreen(Handle.SLIDE), -25, 0, 4);
        window.letGo();
        assertEquals(25 / perMetre, window.scenario().stand().slideMetres(), MILLIMETRE);
        window.await();
        window.pull(window.onScreen(Handle.TURN), -4, -8, 4);
        window.letGo();
        assertTrue(window.scenario().aim().turnUpRadians() < before.aim().turnUpRadians());
        window.await();
        window.pull(window.onScreen(Handle.SUN), 30, 40, 4);
        window.letGo();
        assertTrue(window.scenario().sun().elevationRadians() < before.sun().elevationRadians() - 0.05);
    }

    @Test
    void escapeTakesADragBack() {
        String text = FxThread.get(() -> window.desk.state().text());
        window.pull(window.onScreen(Handle.RAISE), 0, -40, 3);
        assertTrue(window.scenario().stand().raiseMetres() > 0.02);
        press(KeyCode.ESCAPE);
        window.letGo();
        assertEquals(text, FxThread.get(() -> window.desk.state().text()));
        assertFalse(FxThread.get(() -> window.desk.undoableProperty().get()));
    }

    @Test
    void keysMoveWhatTheyStandOn() {
        focus("yard-raise");
        press(KeyCode.UP);
        assertEquals(0.005, window.scenario().stand().raiseMetres(), 1e-9);
        FxThread.run(() -> window.units.set(UnitSystem.INCH));
        Node slide = node("yard-slide");
        FxThread.until("inches are told", () -> !slide.getAccessibleText().contains("cm"));
        focus("yard-slide");
        press(KeyCode.LEFT);
        assertEquals(0.25 * 0.0254, window.scenario().stand().slideMetres(), 1e-9);
        String told = node("yard-slide").getAccessibleText();
        assertTrue(told.contains("0.25") && told.contains("in"), told);
    }

    @Test
    void aPanInTheMirrorIsSaidInWords() {
        FxThread.run(() -> window.desk.change(java.util.Map.of("stand.pull-back", "-78 cm")));
        FxThread.until("it is said", () -> {
            Label words = (Label) window.stage().getScene().lookup("#yard-panel-words");
            return words.getText().startsWith("Nothing is told");
        });
        FxThread.run(() -> window.desk.undo());
        window.await();
        Label words = (Label) node("yard-panel-words");
        assertTrue(words.getText().contains("of the light"), words.getText());
    }

    @Test
    void aPanelPointedAtTellsItsFigures() {
        FxThread.until("the panels are drawn", () -> {
            Node picture = window.stage().getScene().lookup("#yard-panel-picture");
            return picture != null && picture.getBoundsInLocal().getWidth() > 50;
        });
        focus("yard-panel-picture");
        press(KeyCode.RIGHT);
        press(KeyCode.RIGHT);
        Label words = (Label) node("yard-panel-words");
        assertTrue(words.getText().startsWith("Panel 2: sends"), words.getText());
        assertNotNull(words.getText());
    }
}
