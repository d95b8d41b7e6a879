package simmerpoint.viewer.pan;

import javafx.animation.AnimationTimer;
import javafx.scene.control.Button;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Region;

/** Moves the pan back and forth at a press, and stops at the next. */
final class PlayButton extends Button {
    private static final double NANOS = 1e-9;

    PlayButton(PullControl control) {
        super("Play");
        setId("play");
        getStyleClass().add("play");
        setMinWidth(Region.USE_PREF_SIZE);
        setTooltip(new Tooltip("Move the pan back and forth"));
        setAccessibleText("Play: move the pan back and forth");
        AnimationTimer timer = new AnimationTimer() {
            @Override
            public void handle(long now) {
                control.frame(now * NANOS);
            }
        };
        setOnAction(e -> control.toggle(System.nanoTime() * NANOS));
        control.playingProperty().addListener((value, before, now) -> {
            setText(now ? "Stop" : "Play");
            if (now) {
                timer.start();
            } else {
                timer.stop();
            }
        });
        // Out of sight nothing moves.
        sceneProperty().addListener((value, before, now) -> {
            if (now == null) {
                control.stop();
            }
        });
    }
}
