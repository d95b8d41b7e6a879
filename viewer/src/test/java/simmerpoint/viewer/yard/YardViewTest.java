package simmerpoint.viewer.yard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import javafx.scene.robot.Robot;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import simmerpoint.scenario.Scenario;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.FxThread;
import simmerpoint.viewer.theme.Shade;
import simmerpoint.viewer.theme.Theme;

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
        assertTrue(FxThread.get(() -> window.document.undoableProperty().get()));
        FxThread.run(window.document::undo);
        assertEquals(before, window.scenario().stand().pullBackMetres(), 0);
        assertFalse(FxThread.get(() -> window.document.undoableProperty().get()), "one drag, one step");
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
        String text = FxThread.get(() -> window.document.state().values().sourceText());
        window.pull(window.onScreen(Handle.RAISE), 0, -40, 3);
        assertTrue(window.scenario().stand().raiseMetres() > 0.02);
        press(KeyCode.ESCAPE);
        window.letGo();
        assertEquals(text, FxThread.get(() -> window.document.state().values().sourceText()));
        assertFalse(FxThread.get(() -> window.document.undoableProperty().get()));
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
        assertTrue(told.contains("1/4\u00a0in"), told);
    }

    @Test
    void aPanInTheMirrorIsSaidInWords() {
        FxThread.run(() -> window.document.change(java.util.Map.of("stand.pull-back", "-78 cm")));
        FxThread.until("it is said", () -> {
            Label words = (Label) window.stage().getScene().lookup("#yard-panel-words");
            return words.getText().startsWith("There are no figures for panels");
        });
        FxThread.run(() -> window.document.undo());
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
        press(KeyCode.ESCAPE);
        assertTrue(words.getText().contains("of the light from all panels"), words.getText());
        press(KeyCode.RIGHT);
        assertTrue(words.getText().startsWith("Panel 1: "), words.getText());
        focus("yard-raise");
        assertTrue(words.getText().contains("of the light from all panels"), "it goes with the focus");
    }

    /** The outline and the number are in a colour that no panel has; the same picture without them has none of it. */
    @ParameterizedTest
    @EnumSource(Theme.class)
    void aPanelPointedAtIsOutlined(Theme theme) {
        FxThread.run(() -> window.theme.set(theme));
        FxThread.settle();
        window.await();
        Node picture = node("yard-panel-picture");
        focus("yard-panel-picture");
        assertEquals(0, inHandleColour(picture, theme));
        press(KeyCode.RIGHT);
        press(KeyCode.RIGHT);
        int marked = inHandleColour(picture, theme);
        assertTrue(marked > 100, marked + " px");
        press(KeyCode.ESCAPE);
        assertEquals(0, inHandleColour(picture, theme));
    }

    private static int inHandleColour(Node picture, Theme theme) {
        int wanted = argb(Shade.HANDLE.in(theme));
        return FxThread.get(() -> {
            WritableImage image = picture.snapshot(null, null);
            int found = 0;
            for (int y = 0; y < image.getHeight(); y++) {
                for (int x = 0; x < image.getWidth(); x++) {
                    found += image.getPixelReader().getArgb(x, y) == wanted ? 1 : 0;
                }
            }
            return found;
        });
    }

    private static int argb(Color c) {
        return 0xFF000000
                | (int) Math.round(255 * c.getRed()) << 16
                | (int) Math.round(255 * c.getGreen()) << 8
                | (int) Math.round(255 * c.getBlue());
    }

    /** Half a metre's pull would fit the picture anew if it were fitted at once; a second grab at the same place must hold. */
    @Test
    void whatWasLetGoOfStaysUnderTheMouse() {
        Point2D from = window.onScreen(Handle.PULL_BACK);
        double scale = perMetre();
        window.pull(from, 50, -60, 6);
        window.letGo();
        window.await();
        Point2D after = window.onScreen(Handle.PULL_BACK);
        assertEquals(scale, perMetre(), 0);
        assertTrue(after.distance(from.add(50, -60)) < 12, from + " to " + after);
        double first = window.scenario().stand().pullBackMetres();
        window.pull(from.add(50, -60), 8, -10, 2);
        window.letGo();
        assertTrue(window.scenario().stand().pullBackMetres() > first + 0.005, "grabbed again");
    }

    @Test
    void whatIsInForceIsToldInTheYard() {
        Label told = (Label) node("yard-in-force");
        assertEquals("Dish turned up 0.5\u00b0", told.getText());
        FxThread.run(() -> window.document.change(java.util.Map.of("aim.turn.up", "0\u00b0")));
        window.await();
        assertFalse(told.isVisible(), told.getText());
        FxThread.run(() -> window.document.change(java.util.Map.of(
                "stand.raise", "-3 cm", "stand.slide", "2 cm", "aim.turn.up", "-6.3\u00b0", "stand.side", "-1 cm")));
        window.await();
        assertEquals(
                "Pan lowered 3\u00a0cm, 1\u00a0cm to the left; dish slid back 2\u00a0cm, turned down 6.3\u00b0",
                told.getText());
        assertTrue(told.isVisible());
    }

    @Test
    void thePictureIsFittedAnewAfterAnUndo() {
        double before = perMetre();
        FxThread.run(() -> window.document.change(java.util.Map.of("dish.diameter", "1.7 m")));
        window.await();
        FxThread.until("a larger dish is drawn smaller", () -> window.yard.pixelsPerMetre() < before);
        FxThread.run(window.document::undo);
        FxThread.until("it is as large as before", () -> window.yard.pixelsPerMetre() == before);
    }
}
