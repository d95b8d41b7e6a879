package simmerpoint.viewer.answer;

import java.util.Locale;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.SVGPath;
import simmerpoint.drawing.ColourScheme;
import simmerpoint.drawing.Ink;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.TextStyle;
import simmerpoint.heat.HeatLevel;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.live.LiveState;
import simmerpoint.viewer.live.StudyState;
import simmerpoint.viewer.theme.Zoom;

/**
 * The answer across the top: watts first, then what they do to the water, then what is lost and what to take care of. As
 * high as its longest words need, so that nothing below it jumps while figures change.
 */
public final class AnswerStrip extends VBox {
    private static final double WATER_HEIGHT = 64;
    private static final double FOOT_TWO_LINES = 38;
    private static final double FOOT_THREE_LINES = 54;
    private static final double TWO_LINES_FROM = 1240;
    private static final double WATTS_WIDTH = 250;
    private static final double LEVEL_WIDTH = 138;
    private static final double AIMING_WIDTH = 150;
    private static final double LOSS_SHARE = 0.37;

    /** Longer sentences are written smaller. */
    private static final int SHORT = 75;

    private final Label watts = label("watts", "watts");
    private final Label meaning = label("meaning", "lead");
    private final Label certainty = label("certainty", "quiet");
    private final Label level = label("level", "chip");
    private final Label water = label("water", "lead");
    private final Label aiming = label("aiming", "lead");
    private final Label loss = label("loss", "loss-line");
    private final Label safety = label("safety", "caution-line");
    private final ProgressBar progress = new ProgressBar(0);
    private final ObservableValue<LiveState> state;
    private final ObservableValue<StudyState> studies;
    private final ObservableValue<Integer> wrong;
    private final ObservableValue<UnitSystem> units;

    /**
     * Follows all four.
     *
     * @param state the newest answer
     * @param studies the slower studies
     * @param wrong how many values are wrong now
     * @param units of the figures
     */
    public AnswerStrip(
            ObservableValue<LiveState> state,
            ObservableValue<StudyState> studies,
            ObservableValue<Integer> wrong,
            ObservableValue<UnitSystem> units) {
        this.state = state;
        this.studies = studies;
        this.wrong = wrong;
        this.units = units;
        getStyleClass().add("answer-strip");
        setId("answer-strip");
        setSpacing(4);
        setAccessibleRole(AccessibleRole.TEXT);
        setFocusTraversable(true);
        getChildren().addAll(first(), second());
        state.addListener((value, before, now) -> show());
        studies.addListener((value, before, now) -> show());
        wrong.addListener((value, before, now) -> show());
        units.addListener((value, before, now) -> show());
        show();
    }

    private static Label label(String id, String style) {
        Label label = new Label();
        label.setId("answer-" + id);
        label.getStyleClass().add(style);
        label.setMinWidth(0);
        return label;
    }

    private Node first() {
        HBox figure = new HBox(8, watts, meaning);
        figure.setAlignment(Pos.BASELINE_LEFT);
        watts.setMinWidth(Region.USE_PREF_SIZE);
        progress.setMaxWidth(Double.MAX_VALUE);
        progress.setPrefHeight(4);
        progress.setMinHeight(4);
        progress.setId("answer-progress");
        progress.setAccessibleText("How far the finer figures have come");
        VBox left = new VBox(1, figure, certainty, progress);
        meaning.setMinWidth(Region.USE_PREF_SIZE);
        left.setMinWidth(Region.USE_PREF_SIZE);
        VBox middle = new VBox(level);
        middle.setAlignment(Pos.CENTER_LEFT);
        level.setMinWidth(Region.USE_PREF_SIZE);
        water.setWrapText(true);
        water.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(water, Priority.ALWAYS);
        aiming.setWrapText(true);
        HBox row = new HBox(16, left, middle, water, aiming);
        row.setAlignment(Pos.CENTER_LEFT);
        Zoom.follow(this, zoom -> {
            certainty.setMinWidth(zoom * WATTS_WIDTH);
            middle.setMinWidth(zoom * LEVEL_WIDTH);
            water.setMinHeight(zoom * WATER_HEIGHT);
            aiming.setPrefWidth(zoom * AIMING_WIDTH);
            aiming.setMinWidth(zoom * AIMING_WIDTH);
            aiming.setMinHeight(zoom * WATER_HEIGHT);
            row.setMinHeight(zoom * WATER_HEIGHT);
            row.setMaxHeight(zoom * WATER_HEIGHT);
        });
        return row;
    }

    private Node second() {
        SVGPath sign = new SVGPath();
        sign.setContent("M8 0 L16 14 H0 Z M7.2 5 V9.6 H8.8 V5 Z M7.2 10.9 V12.4 H8.8 V10.9 Z");
        sign.setFillRule(javafx.scene.shape.FillRule.EVEN_ODD);
        sign.getStyleClass().add("caution-sign");
        loss.setWrapText(true);
        safety.setWrapText(true);
        loss.prefWidthProperty().bind(widthProperty().multiply(LOSS_SHARE));
        loss.setMinWidth(Region.USE_PREF_SIZE);
        HBox.setHgrow(safety, Priority.ALWAYS);
        safety.setMaxWidth(Double.MAX_VALUE);
        HBox row = new HBox(10, loss, sign, safety);
        row.setAlignment(Pos.CENTER_LEFT);
        widthProperty().addListener((value, before, now) -> foot(row));
        Zoom.follow(this, zoom -> foot(row));
        return row;
    }

    private void foot(HBox row) {
        double zoom = Zoom.of(this);
        double lines = getWidth() > zoom * TWO_LINES_FROM ? FOOT_TWO_LINES : FOOT_THREE_LINES;
        row.setMinHeight(zoom * lines);
        row.setMaxHeight(zoom * lines);
    }

    private void show() {
        StripText text = StripText.of(state.getValue(), studies.getValue(), wrong.getValue(), units.getValue());
        watts.setText(text.watts());
        meaning.setText(text.meaning());
        certainty.setText(text.certainty());
        certainty.setTooltip(text.doubt().isEmpty() ? null : new Tooltip(text.doubt()));
        showLevel(text.level().orElse(null), text.levelWord());
        water.setText(text.refusal().orElse(text.water()));
        style(water, "refusal", text.refusal().isPresent());
        style(water, "long", water.getText().length() > SHORT);
        aiming.setText(text.aiming());
        loss.setText(text.loss());
        safety.setText(text.safety());
        style(this, "stale", text.earlier());
        progress.setProgress(text.done());
        progress.setVisible(text.working());
        setAccessibleText(text.spoken());
    }

    private void showLevel(HeatLevel heat, String word) {
        level.setText(word);
        level.setVisible(heat != null);
        if (heat != null) {
            level.setStyle("-fx-background-color: " + web(Style.of(heat).fill().orElseThrow()) + "; -fx-text-fill: "
                    + web(TextStyle.on(heat).ink()));
        }
    }

    /** Heat levels look the same in every theme. */
    private static String web(Ink ink) {
        return String.format(Locale.ROOT, "#%06x", ColourScheme.PRINT.argb(ink) & 0xFFFFFF);
    }

    private static void style(Node node, String name, boolean on) {
        node.getStyleClass().remove(name);
        if (on) {
            node.getStyleClass().add(name);
        }
    }
}
