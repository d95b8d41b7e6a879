package simmerpoint.viewer.pan;

import javafx.animation.AnimationTimer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import simmerpoint.drawing.chart.MoveChart;

/** The slider that pulls the pan back, above its curve and as wide; a button that plays; the pull-back in figures. */
final class PullRow extends HBox {
    private static final double THUMB = 8;
    private static final double NANOS = 1e-9;

    private final PullControl control;
    private final Button play = new Button("Play");
    private final Slider slider = new Slider();
    private final Label figure = new Label();
    private boolean following;

    PullRow(PullControl control) {
        this.control = control;
        setAlignment(Pos.CENTER_LEFT);
        play();
        slider();
        figure.setId("pull-figure");
        figure.getStyleClass().add("pull-figure");
        Label name = new Label("pull-back");
        name.setId("pull-name");
        name.setLabelFor(slider);
        name.getStyleClass().add("pull-name");
        name.setMinWidth(Region.USE_PREF_SIZE);
        VBox words = new VBox(name, figure);
        words.setAlignment(Pos.CENTER_RIGHT);
        words.setMinWidth(MoveChart.SIDE - THUMB);
        words.setPrefWidth(MoveChart.SIDE - THUMB);
        getChildren().setAll(play, slider, words);
    }

    private void play() {
        play.setId("play");
        play.getStyleClass().add("play");
        play.setMinWidth(MoveChart.SIDE - THUMB);
        play.setPrefWidth(MoveChart.SIDE - THUMB);
        play.setTooltip(new Tooltip("Move the pan back and forth"));
        play.setAccessibleText("Play: move the pan back and forth");
        AnimationTimer timer = new AnimationTimer() {
            @Override
            public void handle(long now) {
                control.frame(now * NANOS);
            }
        };
        play.setOnAction(e -> control.toggle(System.nanoTime() * NANOS));
        control.playingProperty().addListener((value, before, now) -> {
            play.setText(now ? "Stop" : "Play");
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

    private void slider() {
        slider.setId("pull-back");
        slider.setTooltip(new Tooltip("Pull the pan out along the axis, away from the dish"));
        slider.setAccessibleText("Pull-back of the pan");
        HBox.setHgrow(slider, Priority.ALWAYS);
        slider.setMinWidth(40);
        slider.addEventFilter(MouseEvent.MOUSE_PRESSED, e -> control.take());
        slider.addEventFilter(MouseEvent.MOUSE_RELEASED, e -> control.letGo());
        slider.valueProperty().addListener((value, before, now) -> {
            if (!following) {
                control.pullTo(now.doubleValue());
            }
        });
        PullKeys.on(slider, control);
    }

    /** Follows the pan. */
    void show(PullState state) {
        following = true;
        slider.setMin(Math.min(slider.getMin(), state.lowMetres()));
        slider.setMax(state.highMetres());
        slider.setMin(state.lowMetres());
        slider.setValue(state.presentMetres());
        slider.setBlockIncrement(control.words().small());
        following = false;
        figure.setText(control.words().shown(state.presentMetres()));
        slider.setAccessibleText("Pull-back of the pan: " + figure.getText());
    }
}
