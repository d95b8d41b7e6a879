package simmerpoint.viewer.pan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.drawing.chart.Scale;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.FxThread;
import simmerpoint.viewer.ScriptedAsks;
import simmerpoint.viewer.theme.Theme;
import simmerpoint.viewer.workspace.Workspace;

/** The pane in a window, moved by mouse and keys; light is traced at once with few rays. */
class PanWindowTest {
    @TempDir
    Path folder;

    private final PanScenes scene = new PanScenes().answered();
    private final ScriptedAsks asks = new ScriptedAsks();
    private final List<String> told = new ArrayList<>();
    private VBox pane;
    private Stage stage;

    @BeforeEach
    void open() {
        FxThread.run(() -> {
            scene.document
                    .readProperty()
                    .addListener((value, before, now) -> scene.live.set(PanScenes.answer(now.scenario())));
            Workspace work = scene.work(asks, told::add);
            PullControl control = scene.control();
            pane = new VBox(new PanPane(work, control), new RibbonPane(work, control));
            VBox.setVgrow(pane.getChildren().get(0), Priority.ALWAYS);
            Scene inside = new Scene(pane, 420, 740);
            Theme.LIGHT.applyTo(inside);
            stage = new Stage();
            stage.setScene(inside);
            stage.show();
            stage.requestFocus();
        });
        FxThread.settle();
    }

    @AfterEach
    void close() {
        FxThread.run(() -> stage.close());
    }

    private <T> T find(String id, Class<T> type) {
        return type.cast(FxThread.get(() -> pane.lookup("#" + id)));
    }

    private Point2D on(Node node, double x, double y) {
        return FxThread.get(() -> node.localToScreen(x, y));
    }

    private void drag(Point2D from, Point2D to) {
        Robot robot = FxThread.get(Robot::new);
        FxThread.run(() -> robot.mouseMove(from));
        FxThread.settle();
        FxThread.run(() -> robot.mousePress(MouseButton.PRIMARY));
        for (int k = 1; k <= 5; k++) {
            Point2D step = from.interpolate(to, k / 5.0);
            FxThread.run(() -> robot.mouseMove(step));
            FxThread.settle();
        }
        FxThread.run(() -> robot.mouseRelease(MouseButton.PRIMARY));
        FxThread.settle();
    }

    private void type(KeyCode... codes) {
        Robot robot = FxThread.get(Robot::new);
        for (KeyCode code : codes) {
            FxThread.run(() -> robot.keyPress(code));
            FxThread.settle();
        }
        for (int k = codes.length - 1; k >= 0; k--) {
            KeyCode code = codes[k];
            FxThread.run(() -> robot.keyRelease(code));
        }
        FxThread.settle();
    }

    private double pullBack() {
        return FxThread.get(() -> scene.scenario().stand().pullBackMetres());
    }

    private static CurveFrame frame(CurveView curve) {
        return FxThread.get(() -> curve.frame().orElseThrow());
    }

    @Test
    void theMarkIsDraggedAlongTheCurveAndTheDragIsOneStepToUndo() {
        CurveView curve = find("pull-curve", CurveView.class);
        CurveFrame frame = frame(curve);
        double y = frame.box().middleY();
        drag(on(curve, frame.x(0) + 3, y), on(curve, frame.x(0.1) + 3, y));
        // A pixel is about 3 mm.
        assertEquals(0.1, pullBack(), 0.004);
        assertTrue(find("pull-sentence", Label.class).getText().startsWith("At 10.") || pullBack() < 0.1);
        FxThread.run(scene.document::undo);
        assertEquals(0, pullBack());
        assertFalse(FxThread.get(() -> scene.document.undoableProperty().get()));
    }

    @Test
    void arrowKeysMoveThePanOnTheCurve() {
        CurveView curve = find("pull-curve", CurveView.class);
        FxThread.run(curve::requestFocus);
        type(KeyCode.RIGHT);
        assertEquals(0.005, pullBack(), 1e-9);
        type(KeyCode.SHIFT, KeyCode.RIGHT);
        assertEquals(0.03, pullBack(), 1e-9);
        type(KeyCode.LEFT);
        assertEquals(0.025, pullBack(), 1e-9);
        assertTrue(curve.getAccessibleText().contains("At 2.5\u00a0cm: "));
        FxThread.run(scene.document::undo);
        assertEquals(0.03, pullBack(), 1e-9);
    }

    @Test
    void thePanIsDraggedAlongItsRibbonAndSetDownByAClick() {
        PlaceRibbon ribbon = find("place-ribbon", PlaceRibbon.class);
        Scale scale = FxThread.get(() -> ribbon.scale().orElseThrow());
        double y = FxThread.get(() -> ribbon.getHeight() / 2);
        drag(on(ribbon, scale.at(0) + 2, y), on(ribbon, scale.at(0.12) + 2, y));
        // A pixel is about 2 mm.
        assertEquals(0.12, pullBack(), 0.004);
        FxThread.run(scene.document::undo);
        assertEquals(0, pullBack(), "one drag, one step back");
        Robot robot = FxThread.get(Robot::new);
        Point2D there = on(ribbon, scale.at(-0.2), y);
        FxThread.run(() -> {
            robot.mouseMove(there);
            robot.mouseClick(MouseButton.PRIMARY);
        });
        FxThread.settle();
        assertEquals(-0.2, pullBack(), 0.004);
        FxThread.run(scene.document::undo);
        FxThread.run(ribbon::requestFocus);
        type(KeyCode.RIGHT);
        assertEquals(0.005, pullBack(), 1e-9);
        assertTrue(ribbon.getAccessibleText().startsWith("Place of the pan: 0.5\u00a0cm."), ribbon.getAccessibleText());
    }

    /** The words of the places are those of the study, which is checked elsewhere. */
    @Test
    void theRibbonSaysWhatThePanDoesHereAndThere() {
        Label sentence = find("ribbon-sentence", Label.class);
        assertTrue(sentence.getText().startsWith("Here it will boil. For a simmer, "), sentence.getText());
        PlaceRibbon ribbon = find("place-ribbon", PlaceRibbon.class);
        Scale scale = FxThread.get(() -> ribbon.scale().orElseThrow());
        Robot robot = FxThread.get(Robot::new);
        Point2D there = on(ribbon, scale.at(0.2), 30);
        FxThread.run(() -> robot.mouseMove(there));
        FxThread.settle();
        assertTrue(sentence.getText().contains(": simmer, about "), sentence.getText());
        assertTrue(sentence.getText().contains(" less than where the pan stands now"), sentence.getText());
    }

    /** What is said below the curve is what every other part of the window shows: the same result, at its own place. */
    @Test
    void theHottestSpotIsTheSameInLegendAndSentence() {
        FxThread.run(() -> scene.document.change(java.util.Map.of("stand.pull-back", "6 cm")));
        FxThread.settle();
        var result = FxThread.get(() -> scene.live.get().result().orElseThrow());
        String spot = new FigureFormat(UnitSystem.METRIC)
                .roughFlux(result.spot().peakFlux().value());
        String said = find("pull-sentence", Label.class).getText();
        assertTrue(said.startsWith("At 6.0\u00a0cm: ") && said.contains("hottest spot about " + spot + "."), said);
    }

    @Test
    void playsAtAPressAndStopsAtAPress() {
        assertEquals(0, pullBack());
        FxThread.run(() -> pane.lookup("#play").requestFocus());
        type(KeyCode.SPACE);
        FxThread.until("the pan moves", () -> scene.scenario().stand().pullBackMetres() > 0.01);
        type(KeyCode.SPACE);
        double there = pullBack();
        FxThread.settle();
        FxThread.settle();
        assertEquals(there, pullBack());
        FxThread.run(scene.document::undo);
        assertEquals(0, pullBack());
    }

    @Test
    void theMapIsReadUnderTheMouseAndWithTheKeys() {
        PlaneView map = find("pan-map", PlaneView.class);
        Label readout = find("pan-readout", Label.class);
        assertEquals("", readout.getText());
        Robot robot = FxThread.get(Robot::new);
        Point2D middle = on(map, 100, map.getHeight() / 2);
        FxThread.run(() -> robot.mouseMove(middle));
        FxThread.settle();
        assertTrue(readout.getText().contains("kW/m\u00b2"), readout.getText());
        Point2D away = on(find("pull-sentence", Label.class), 5, 5);
        FxThread.run(() -> robot.mouseMove(away));
        FxThread.settle();
        assertEquals("", readout.getText());
        FxThread.run(map::requestFocus);
        type(KeyCode.DOWN);
        String first = readout.getText();
        type(KeyCode.SHIFT, KeyCode.DOWN);
        assertTrue(first.contains("kW/m\u00b2") && !first.equals(readout.getText()));
        assertTrue(map.getAccessibleText().contains(readout.getText()));
        type(KeyCode.ESCAPE);
        assertEquals("", readout.getText());
        type(KeyCode.DOWN);
        assertFalse(readout.getText().isEmpty());
        FxThread.run(() -> pane.lookup("#play").requestFocus());
        assertEquals("", readout.getText(), "it goes with the focus");
        assertTrue(find("pan-evenness", Label.class).isVisible());
    }

    @Test
    void theScaleCanBeHeldAndMapAndCurveCanBeSaved() throws Exception {
        ChoiceBox<?> choice = find("pan-scale", ChoiceBox.class);
        FxThread.run(() -> choice.getSelectionModel().select(5));
        assertEquals(
                "up to 20\u00a0kW/m\u00b2",
                FxThread.get(() -> choice.getValue() instanceof ScaleChoice c ? c.words() : ""));
        MenuButton save = find("pan-save", MenuButton.class);
        asks.file = Optional.of(folder.resolve("moves.csv"));
        FxThread.run(() -> save.getItems().get(3).fire());
        assertTrue(Files.readString(folder.resolve("moves.csv"), StandardCharsets.UTF_8)
                .contains("pull-back,"));
        asks.file = Optional.of(folder.resolve("light.png"));
        FxThread.run(() -> save.getItems().get(0).fire());
        byte[] png = Files.readAllBytes(folder.resolve("light.png"));
        assertEquals("PNG", new String(png, 1, 3, StandardCharsets.US_ASCII));
        asks.file = Optional.of(folder.resolve("no").resolve("such.csv"));
        FxThread.run(() -> save.getItems().get(1).fire());
        assertTrue(told.get(told.size() - 1).contains("there is no folder"), told.toString());
    }
}
