package simmerpoint.viewer.comparison;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.beans.value.ObservableValue;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import simmerpoint.report.ResultFiles;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.dialog.FileExport;
import simmerpoint.viewer.dialog.FileKind;
import simmerpoint.viewer.dialog.TakeAwayMenu;
import simmerpoint.viewer.pan.LightMap;
import simmerpoint.viewer.parts.Buttons;
import simmerpoint.viewer.theme.Theme;

/** The kept design on the left, the current one on the right, their differences in the middle. */
public final class ComparisonPane extends VBox {
    private static final PseudoClass ROOMY = PseudoClass.getPseudoClass("roomy");
    private static final double ROOMY_WIDTH = 1200;
    private static final double ROOMY_HEIGHT = 240;
    private static final double PROGRESS_WIDTH = 90;

    private final ComparisonModel model;
    private final ObservableValue<UnitSystem> units;
    private final LightMap keptMap = new LightMap("kept-map", "Light on the pan of the kept design");
    private final LightMap nowMap = new LightMap("now-map", "Light on the pan of the current design");
    private final Label keptName = label("kept-name", "which");
    private final Label nowName = label("now-name", "which");
    private final Label sentence = label("beside-sentence", "lead");
    private final Label readout = label("beside-readout", "quiet");
    private final ProgressBar progress = new ProgressBar(0);
    private final Differences table = new Differences();
    private List<PairFigures.Row> figures = List.of();

    /** Follows the model. */
    public ComparisonPane(
            ComparisonModel model, ObservableValue<UnitSystem> units, ObservableValue<Theme> theme, FileExport export) {
        this.model = model;
        this.units = units;
        getStyleClass().add("beside-pane");
        getStylesheets().add(ComparisonPane.class.getResource("comparison.css").toExternalForm());
        setMinSize(0, 0);
        MapsBesideText parts = new MapsBesideText(keptName, keptMap, middle(), nowName, nowMap);
        VBox.setVgrow(parts, Priority.ALWAYS);
        Label none = label("beside-none", "lead");
        none.setText("Keep a design, then change it: both are shown here side by side, with what differs.");
        Node head = head(export);
        for (Node each : List.of(head, parts)) {
            each.visibleProperty().bind(none.visibleProperty().not());
            each.managedProperty().bind(each.visibleProperty());
        }
        none.managedProperty().bind(none.visibleProperty());
        none.visibleProperty()
                .bind(model.stateProperty().map(state -> !state.isKept()).orElse(true));
        getChildren().addAll(none, head, parts);
        model.stateProperty().addListener((value, before, now) -> show());
        units.addListener((value, before, now) -> show());
        theme.addListener((value, before, now) -> applyTheme(now));
        keptMap.readoutProperty().addListener((value, before, now) -> read());
        nowMap.readoutProperty().addListener((value, before, now) -> read());
        applyTheme(theme.getValue());
        show();
    }

    private static Label label(String id, String style) {
        Label label = new Label();
        label.setId(id);
        label.getStyleClass().add(style);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    private Node head(FileExport export) {
        Label title = label("beside-title", "title");
        title.setText("Both on one colour scale");
        title.setMinWidth(0);
        HBox.setHgrow(title, Priority.ALWAYS);
        title.setMaxWidth(Double.MAX_VALUE);
        progress.setId("beside-progress");
        progress.setMinWidth(0);
        progress.setPrefWidth(PROGRESS_WIDTH);
        progress.setPrefHeight(4);
        progress.setAccessibleText("How far the pair has come");
        TakeAwayMenu save = new TakeAwayMenu("beside-save", "Take away what differs between the two", export);
        save.setMinWidth(Region.USE_PREF_SIZE);
        save.add("Both as a picture", FileKind.PICTURE, "compare", this::files);
        save.add("Both as a table", FileKind.TABLE, "compare", this::files);
        save.add("Both as figures", FileKind.FIGURES, "compare", this::files);
        HBox head = new HBox(
                6,
                title,
                progress,
                Buttons.button(
                        "go-back",
                        "Back to the kept one",
                        "Go back to the kept design; undo takes that back",
                        model::goBack),
                Buttons.button(
                        "swap",
                        "Swap",
                        "The kept design becomes the current one, and the other way round",
                        model::swap),
                Buttons.button("drop", "Drop", "Keep none of them any more", model::drop),
                save);
        head.setAlignment(Pos.CENTER_LEFT);
        return head;
    }

    private Optional<Callable<ResultFiles>> files() {
        UnitSystem system = units.getValue();
        return model.comparison().map(whole -> () -> ResultFiles.of(whole.get(), system));
    }

    private Node middle() {
        VBox inside = new VBox(6, sentence, table);
        inside.getStyleClass().add("beside-words");
        ScrollPane scroll = new ScrollPane(inside);
        scroll.setId("beside-scroll");
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setMinSize(0, 0);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        // What is read stands below, so that nothing above moves when it comes and goes.
        readout.managedProperty().bind(readout.textProperty().isNotEmpty());
        widthProperty().addListener((value, before, now) -> spread());
        heightProperty().addListener((value, before, now) -> spread());
        VBox middle = new VBox(4, scroll, readout);
        middle.setMinSize(0, 0);
        return middle;
    }

    /** Larger letters where there is room for them. */
    private void spread() {
        pseudoClassStateChanged(ROOMY, getWidth() >= ROOMY_WIDTH && getHeight() >= ROOMY_HEIGHT);
    }

    private void applyTheme(Theme theme) {
        keptMap.applyTheme(theme);
        nowMap.applyTheme(theme);
    }

    private void show() {
        ComparisonState state = model.stateProperty().get();
        if (!state.isKept()) {
            return;
        }
        UnitSystem system = units.getValue();
        state.keptResult().ifPresent(r -> keptMap.show(r, false, state.top(), system));
        state.nowResult().ifPresent(r -> nowMap.show(r, state.nowEarlier(), state.top(), system));
        keptName.setText(state.name(true, system));
        nowName.setText(state.name(false, system));
        sentence.setText(state.sentence(system));
        progress.setProgress(state.pair().done());
        progress.setVisible(state.pair().working() && !state.paired());
        figures = state.figures()
                .map(f -> f.rows(system))
                .orElseGet(() -> figures.stream().map(PairFigures.Row::unknown).toList());
        table.show(figures, state.differing(system));
    }

    private void read() {
        String kept = keptMap.readoutProperty().get();
        String now = nowMap.readoutProperty().get();
        readout.setText(!kept.isEmpty() ? "Kept: " + kept : now.isEmpty() ? "" : "Current: " + now);
    }
}
