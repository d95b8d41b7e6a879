package simmerpoint.viewer.app;

import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.util.Duration;

/** Sees to it that a window opens at the size asked for, whatever its manager makes of it, as far as the screen has room. */
final class WindowSize {
    private static final int LOOKS = 5;
    private static final double BETWEEN_MILLIS = 80;
    private static final double CLOSE = 1;

    private WindowSize() {}

    /** Looks a few times, since managers answer late, and mends the size while nobody has touched the window. */
    static void keep(Stage stage, double width, double height) {
        Timeline looks = new Timeline(new KeyFrame(Duration.millis(BETWEEN_MILLIS), e -> mend(stage, width, height)));
        looks.setCycleCount(LOOKS);
        looks.play();
    }

    private static void mend(Stage stage, double width, double height) {
        Scene scene = stage.getScene();
        if (scene == null || stage.isMaximized() || stage.isFullScreen()) {
            return;
        }
        Rectangle2D room = Screen.getPrimary().getVisualBounds();
        double wide = Math.min(room.getWidth(), stage.getWidth() + width - scene.getWidth());
        double high = Math.min(room.getHeight(), stage.getHeight() + height - scene.getHeight());
        if (Math.abs(wide - stage.getWidth()) > CLOSE) {
            stage.setWidth(wide);
        }
        if (Math.abs(high - stage.getHeight()) > CLOSE) {
            stage.setHeight(high);
        }
    }
}
