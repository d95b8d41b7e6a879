package simmerpoint.viewer.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.Region;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import simmerpoint.viewer.FxThread;

class WindowLayoutTest {
    @Test
    void aClickOnAPartReachesIt() {
        int[] clicks = {0};
        Stage stage = FxThread.get(() -> {
            WindowLayout workbench = new WindowLayout();
            Button button = new Button("Here");
            button.setOnAction(e -> clicks[0]++);
            workbench.setYard(button);
            workbench.setPan(new Region());
            Stage s = new Stage();
            s.setScene(new Scene(workbench, 1024, 700));
            s.show();
            return s;
        });
        FxThread.settle();
        FxThread.run(() -> {
            var bounds = stage.getScene()
                    .lookup(".button")
                    .localToScreen(stage.getScene().lookup(".button").getBoundsInLocal());
            Robot robot = new Robot();
            robot.mouseMove(bounds.getCenterX(), bounds.getCenterY());
            robot.mouseClick(MouseButton.PRIMARY);
        });
        FxThread.until("the click has arrived", () -> clicks[0] > 0);
        FxThread.run(stage::close);
        assertEquals(1, clicks[0]);
    }

    @Test
    void aPartThatIsNotThereTakesNoRoom() {
        FxThread.run(() -> {
            WindowLayout workbench = new WindowLayout();
            Region yard = new Region();
            workbench.setYard(yard);
            Scene scene = new Scene(workbench, 1024, 700);
            scene.snapshot(null);
            double alone = yard.getHeight();
            Region other = new Region();
            workbench.setBeside(other);
            scene.snapshot(null);
            assertTrue(other.getHeight() > 100 && yard.getHeight() < alone - 100, "the second design has no room");
            workbench.setBeside(null);
            scene.snapshot(null);
            assertEquals(alone, yard.getHeight());
        });
    }

    @Test
    void withTheDrawerOpenInANarrowWindowYardAndPanStandOneAboveTheOther() {
        FxThread.run(() -> {
            WindowLayout workbench = new WindowLayout();
            Region yard = new Region();
            Region pan = new Region();
            workbench.setYard(yard);
            workbench.setPan(pan);
            Scene scene = new Scene(workbench, WindowLayout.LEAST_WIDTH, WindowLayout.LEAST_HEIGHT);
            scene.snapshot(null);
            double share = yard.getWidth() / (yard.getWidth() + pan.getWidth());
            assertEquals(2 / 3.0, share, 0.05);
            workbench.drawerOpenProperty().set(true);
            scene.snapshot(null);
            scene.snapshot(null);
            assertEquals(yard.getWidth(), pan.getWidth());
            assertTrue(yard.getHeight() > 200 && pan.getHeight() > 200, yard.getHeight() + ", " + pan.getHeight());
            workbench.drawerOpenProperty().set(false);
            scene.snapshot(null);
            scene.snapshot(null);
            assertEquals(yard.getHeight(), pan.getHeight());
        });
    }

    @Test
    void inALowAndNarrowWindowThePanGivesWayToTheSecondDesign() {
        FxThread.run(() -> {
            WindowLayout workbench = new WindowLayout();
            Region yard = new Region();
            Region pan = new Region();
            workbench.setYard(yard);
            workbench.setPan(pan);
            workbench.drawerOpenProperty().set(true);
            Scene scene = new Scene(workbench, WindowLayout.LEAST_WIDTH, WindowLayout.LEAST_HEIGHT - 180);
            workbench.setBeside(new Region());
            scene.snapshot(null);
            scene.snapshot(null);
            assertNull(scene.lookup("#pan-slot"));
            assertTrue(yard.getHeight() > 200, "the yard has " + yard.getHeight());
            workbench.setBeside(null);
            scene.snapshot(null);
            scene.snapshot(null);
            assertNotNull(scene.lookup("#pan-slot"));
            workbench.setBeside(new Region());
            workbench.drawerOpenProperty().set(false);
            scene.snapshot(null);
            scene.snapshot(null);
            assertEquals(yard.getHeight(), pan.getHeight());
        });
    }
}
