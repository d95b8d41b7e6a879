package simmerpoint.viewer.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
    void aClickOnAViewReachesItUnderTheNotice() {
        int[] clicks = {0};
        Stage stage = FxThread.get(() -> {
            WindowLayout workbench = new WindowLayout();
            Button button = new Button("Here");
            button.setOnAction(e -> clicks[0]++);
            workbench.setNotice(new NotificationBar());
            workbench.setView(button);
            Stage s = new Stage();
            s.setScene(new Scene(workbench, 1024, 700));
            s.show();
            return s;
        });
        FxThread.settle();
        FxThread.run(() -> {
            var button = stage.getScene().lookup(".view-place .button");
            var bounds = button.localToScreen(button.getBoundsInLocal());
            Robot robot = new Robot();
            robot.mouseMove(bounds.getCenterX(), bounds.getCenterY());
            robot.mouseClick(MouseButton.PRIMARY);
        });
        FxThread.until("the click has arrived", () -> clicks[0] > 0);
        FxThread.run(stage::close);
        assertEquals(1, clicks[0]);
    }

    @Test
    void aNoticeMovesNothing() {
        FxThread.run(() -> {
            WindowLayout workbench = new WindowLayout();
            NotificationBar notice = new NotificationBar();
            Region view = new Region();
            workbench.setNotice(notice);
            workbench.setView(view);
            Scene scene = new Scene(workbench, 1024, 700);
            scene.snapshot(null);
            var before = view.localToScene(view.getLayoutBounds());
            notice.tell("Not opened. " + "Something is wrong with the file. ".repeat(8));
            scene.snapshot(null);
            assertTrue(notice.isVisible() && notice.getHeight() > 10, "the notice is seen");
            assertEquals(before, view.localToScene(view.getLayoutBounds()));
        });
    }

    /** A drawer that was open, a wider window, another view before: nothing of that is left. */
    @Test
    void whatSizeAViewGetsDependsOnTheWindowAlone() {
        FxThread.run(() -> {
            WindowLayout workbench = new WindowLayout();
            Region view = new Region();
            workbench.setView(view);
            Scene scene = new Scene(workbench, 1024, 700);
            scene.snapshot(null);
            var first = view.localToScene(view.getLayoutBounds());
            workbench.drawerOpenProperty().set(true);
            workbench.resize(1900, 1100);
            workbench.layout();
            assertTrue(view.getWidth() > first.getWidth(), "it grows with the window");
            workbench.setView(new Region());
            workbench.drawerOpenProperty().set(false);
            workbench.resize(1024, 700);
            workbench.setView(view);
            scene.snapshot(null);
            assertEquals(first, view.localToScene(view.getLayoutBounds()));
        });
    }
}
