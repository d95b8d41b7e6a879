package simmerpoint.viewer.cook;

import java.util.Optional;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import simmerpoint.viewer.workspace.Workspace;

/** When to aim again: a clock that runs down from the press of a button. */
final class CountdownPane extends VBox {
    private static final PseudoClass OVER = PseudoClass.getPseudoClass("over");
    private static final double NANOS = 1e-9;

    private final Workspace work;
    private final Label clock = new Label();
    private final Label words = new Label();
    private final ProgressBar left = new ProgressBar(1);
    private final Button start = new Button();
    private final Button stop = new Button("Stop");
    private final Timeline timer = new Timeline(new KeyFrame(Duration.millis(250), e -> show()));
    private Optional<Countdown> countdown = Optional.empty();

    CountdownPane(Workspace work) {
        this.work = work;
        setId("countdown");
        getStyleClass().add("card");
        Label heading = new Label("Aim again in");
        heading.getStyleClass().add("card-heading");
        clock.setId("countdown-clock");
        clock.getStyleClass().add("clock");
        words.setId("countdown-words");
        words.setWrapText(true);
        words.setMinHeight(Region.USE_PREF_SIZE);
        words.getStyleClass().add("quiet");
        left.setMaxWidth(Double.MAX_VALUE);
        left.getStyleClass().add("time-left");
        left.setAccessibleText("Time left until the dish is to be aimed again");
        start.setId("countdown-start");
        start.setMinWidth(Region.USE_PREF_SIZE);
        start.setTooltip(new Tooltip("Press this when you have aimed the dish: the clock runs down from there"));
        start.setOnAction(e -> set(countdown.map(c -> c.aimed(now()))));
        stop.setId("countdown-stop");
        stop.setMinWidth(Region.USE_PREF_SIZE);
        stop.setTooltip(new Tooltip("Stop the clock"));
        stop.setOnAction(e -> set(countdown.map(Countdown::stopped)));
        Region between = new Region();
        HBox.setHgrow(between, Priority.ALWAYS);
        HBox row = new HBox(8, clock, between, start);
        row.setAlignment(Pos.CENTER_LEFT);
        HBox under = new HBox(8, words, stop);
        under.setAlignment(Pos.CENTER_LEFT);
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMaxWidth(Double.MAX_VALUE);
        stop.managedProperty().bind(stop.visibleProperty());
        getChildren().addAll(heading, row, left, under);
        timer.setCycleCount(Animation.INDEFINITE);
        work.studies().addListener((value, before, now) -> follow());
        work.live().addListener((value, before, now) -> follow());
        follow();
    }

    private static double now() {
        return System.nanoTime() * NANOS;
    }

    private void follow() {
        Optional<Double> minutes = work.studies()
                .getValue()
                .timesOf(work.scenario())
                .map(times -> times.deadOnInterval().minutes());
        if (minutes.isPresent()) {
            set(countdown.map(c -> c.lasting(minutes.get())).or(() -> minutes.map(Countdown::of)));
        } else {
            show();
        }
    }

    private void set(Optional<Countdown> next) {
        countdown = next;
        boolean runs = next.filter(Countdown::runs).isPresent();
        if (runs) {
            timer.play();
        } else {
            timer.stop();
        }
        show();
    }

    private void show() {
        boolean runs = countdown.filter(Countdown::runs).isPresent();
        boolean over = countdown.filter(c -> c.over(now())).isPresent();
        clock.setText(countdown.map(c -> c.clock(now())).orElse("\u2013"));
        left.setProgress(countdown.map(c -> c.share(now())).orElse(0.0));
        start.setText(runs ? "Aimed again" : "Aimed now");
        start.setDisable(countdown.isEmpty());
        stop.setVisible(runs);
        pseudoClassStateChanged(OVER, over);
        words.setText(
                over
                        ? "Aim again now: by now a tenth of the heat or more is lost."
                        : runs
                                ? "By then a tenth of the heat is lost."
                                : "By then a tenth of the heat is lost. Press when the dish is aimed.");
    }
}
