package simmerpoint.viewer.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.Region;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import simmerpoint.viewer.FxThread;

class WorkbenchTest {
    @Test
    void aClickOnAPartReachesIt() {
        int[] clicks = {0};
        Stage stage = FxThread.get(() -> {
            Workbench workbench = new Workbench();
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
            Workbench workbench = new Workbench();
            assertFalse(workbench.lookup("#beside-slot").isManaged());
            workbench.setBeside(new Region());
            assertTrue(workbench.lookup("#beside-slot").isManaged());
            workbench.setBeside(null);
            assertFalse(workbench.lookup("#beside-slot").isManaged());
        });
    }
}
