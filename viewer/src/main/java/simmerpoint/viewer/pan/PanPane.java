package simmerpoint.viewer.pan;

import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.application.Platform;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import simmerpoint.drawing.map.FluxScale;
import simmerpoint.report.ResultFiles;
import simmerpoint.study.pan.PanResult;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.dialog.FileExport;
import simmerpoint.viewer.dialog.FileKind;
import simmerpoint.viewer.dialog.TakeAwayMenu;
import simmerpoint.viewer.live.LiveState;
import simmerpoint.viewer.live.StudyState;
import simmerpoint.viewer.theme.Theme;
import simmerpoint.viewer.theme.Zoom;
import simmerpoint.viewer.workspace.Workspace;

/** The pan from below: the light on it, and what it gets along its way. */
public final class PanPane extends VBox {
    private static final double BRIEF_BELOW = 230;
    private static final double CHOICE_WIDTH = 128;

    private final ObservableValue<LiveState> live;
    private final ObservableValue<StudyState> studies;
    private final ObservableValue<UnitSystem> units;
    private final PullControl control;
    private final PlaneView plane = new PlaneView("pan-map", "Light on the pan");
    private final WallView wall = new WallView("pan-wall");
    private final Label evenness = label("pan-evenness");
    private final Label readout = label("pan-readout");
    private final LightPart light = new LightPart(plane, wall, evenness, readout);
    private final CurveView curve;
    private final Label sentence = label("pull-sentence", new SteadyLabel(CurveState.LONGEST));
    private final ProgressBar progress = new ProgressBar(0);
    private final ObjectProperty<ScaleChoice> scale = new SimpleObjectProperty<>(this, "scale", ScaleChoice.FOLLOWS);
    private Optional<Double> pointed = Optional.empty();

    /** A pane that follows what is worked on; the pan is moved by {@code control}. */
    public PanPane(Workspace work, PullControl control) {
        this.live = work.live();
        this.studies = work.studies();
        this.units = work.units();
        this.control = control;
        curve = new CurveView("pull-curve", control, this::point);
        getStyleClass().add("pan-pane");
        getStylesheets().add(PanPane.class.getResource("pan.css").toExternalForm());
        setMinSize(0, 0);
        TwoParts parts = new TwoParts(light, curvePart());
        ScrollPane room = new ScrollPane(parts);
        room.setFitToWidth(true);
        room.setFitToHeight(true);
        room.setFocusTraversable(false);
        room.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        room.setMinSize(0, 0);
        VBox.setVgrow(room, Priority.ALWAYS);
        getChildren().addAll(head(work.export()), room);
        follow(work.theme());
        showLight();
        showCurve();
    }

    private static Label label(String id) {
        return label(id, new Label());
    }

    private static Label label(String id, Label label) {
        label.setId(id);
        label.setWrapText(true);
        label.setAlignment(Pos.TOP_LEFT);
        label.getStyleClass().add("words");
        return label;
    }

    private Node head(FileExport takeAway) {
        ChoiceBox<ScaleChoice> choice = new ChoiceBox<>();
        choice.setId("pan-scale");
        choice.getItems().setAll(ScaleChoice.ALL);
        choice.setConverter(words());
        choice.valueProperty().bindBidirectional(scale);
        choice.setAccessibleText("What the colours reach up to");
        choice.setTooltip(new Tooltip("What the colours reach up to: the brightest place, or always the same flux"));
        Zoom.follow(choice, zoom -> {
            choice.setMinWidth(zoom * CHOICE_WIDTH);
            choice.setPrefWidth(zoom * CHOICE_WIDTH);
        });
        Region between = new Region();
        HBox.setHgrow(between, Priority.ALWAYS);
        TakeAwayMenu save = new TakeAwayMenu("pan-save", "Take away what is seen of the pan", takeAway);
        save.setMinWidth(Region.USE_PREF_SIZE);
        save.add("The map as a picture", FileKind.PICTURE, "light", this::map);
        save.add("The map as a table", FileKind.TABLE, "light", this::map);
        save.add("The curves as a picture", FileKind.PICTURE, "moves", this::curves);
        save.add("The curves as a table", FileKind.TABLE, "moves", this::curves);
        HBox head = new HBox(6, choice, between, save);
        head.setAlignment(Pos.CENTER_LEFT);
        head.getStyleClass().add("pan-head");
        return head;
    }

    private static StringConverter<ScaleChoice> words() {
        return new StringConverter<>() {
            @Override
            public String toString(ScaleChoice choice) {
                return choice == null ? "" : choice.words();
            }

            @Override
            public ScaleChoice fromString(String text) {
                throw new UnsupportedOperationException("choices are not typed");
            }
        };
    }

    /** Only a finished answer is saved. */
    private Optional<TraceResult> settled() {
        LiveState now = live.getValue();
        return now != null && now.settled() && now.current() ? now.result() : Optional.empty();
    }

    private Optional<PanResult> studied() {
        LiveState now = live.getValue();
        return now == null ? Optional.empty() : studies.getValue().panOf(now.scenario());
    }

    private Optional<Callable<ResultFiles>> map() {
        UnitSystem system = units.getValue();
        return settled().map(result -> () -> ResultFiles.of(result, system));
    }

    private Optional<Callable<ResultFiles>> curves() {
        UnitSystem system = units.getValue();
        return studied().map(result -> () -> ResultFiles.of(result, system));
    }

    private Node curvePart() {
        progress.setId("pull-progress");
        progress.setMaxWidth(Double.MAX_VALUE);
        progress.setPrefHeight(4);
        progress.setMinHeight(4);
        progress.setAccessibleText("How far the curve has come");
        sentence.setMinHeight(Region.USE_PREF_SIZE);
        VBox part = new VBox(curve, sentence, progress);
        part.setMinSize(0, 0);
        VBox.setVgrow(curve, Priority.ALWAYS);
        return part;
    }

    private void follow(ObservableValue<Theme> theme) {
        live.addListener((value, before, now) -> {
            showLight();
            showCurve();
        });
        control.stateProperty().addListener((value, before, now) -> showCurve());
        units.addListener((value, before, now) -> {
            showLight();
            showCurve();
        });
        light.heightProperty().addListener((value, before, now) -> {
            if (before.doubleValue() < BRIEF_BELOW != now.doubleValue() < BRIEF_BELOW) {
                Platform.runLater(this::showEvenness);
            }
        });
        scale.addListener((value, before, now) -> showLight());
        plane.readoutProperty().addListener((value, before, now) -> showReadout());
        wall.readoutProperty().addListener((value, before, now) -> showReadout());
        theme.addListener((value, before, now) -> applyTheme(now));
        applyTheme(theme.getValue());
    }

    private void applyTheme(Theme theme) {
        plane.applyTheme(theme);
        wall.applyTheme(theme);
        curve.applyTheme(theme);
    }

    private void showLight() {
        LiveState now = live.getValue();
        Optional<TraceResult> result = now == null ? Optional.empty() : now.result();
        light.show(result.map(r -> new MapState(
                r,
                !now.current(),
                scale.get().top(FluxScale.top(r)),
                scale.get(),
                units.getValue(),
                true,
                Optional.empty())));
        showEvenness();
        showReadout();
    }

    /** The whole sentence, or where there is little room its figure. */
    private void showEvenness() {
        LiveState now = live.getValue();
        boolean brief = light.getHeight() < BRIEF_BELOW;
        evenness.setText((now == null ? Optional.<TraceResult>empty() : now.result())
                .map(r -> new MapReadout(r, units.getValue()))
                .map(r -> brief ? r.briefEvenness() : r.evenness())
                .orElse(""));
    }

    private void showReadout() {
        String said = plane.readoutProperty().get();
        String beside = wall.readoutProperty().get();
        readout.setText(said.isEmpty() ? beside : said);
        evenness.setVisible(readout.getText().isEmpty());
    }

    private void point(Optional<Double> place) {
        pointed = place;
        showCurve();
    }

    private void showCurve() {
        PullState pull = control.stateProperty().get();
        LiveState now = live.getValue();
        CurveState state =
                new CurveState(pull, now == null ? Optional.empty() : now.result(), pointed, units.getValue());
        curve.show(state);
        sentence.setText(state.sentence());
        progress.setProgress(pull.done());
        progress.setVisible(pull.hasPan() && pull.working() && !pull.fits());
    }
}
