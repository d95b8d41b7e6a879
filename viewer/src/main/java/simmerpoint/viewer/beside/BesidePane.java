package simmerpoint.viewer.beside;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import simmerpoint.report.CompareCsv;
import simmerpoint.report.CompareJson;
import simmerpoint.report.ComparePicture;
import simmerpoint.study.Comparison;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.asking.FileKind;
import simmerpoint.viewer.asking.TakeAway;
import simmerpoint.viewer.pan.LightMap;
import simmerpoint.viewer.pan.SaveMenu;
import simmerpoint.viewer.theme.Theme;

/** The kept design to the left, the one at hand to the right, what differs between them in the middle. */
public final class BesidePane extends VBox {
    private static final int COLUMNS = 4;
    private static final double ROOMY = 1300;
    private static final double NARROW_CELL = 112;
    private static final double WIDE_CELL = 300;

    private final BesideModel model;
    private final ObservableValue<UnitSystem> units;
    private final LightMap keptMap = new LightMap("kept-map", "Light on the pan of the kept design");
    private final LightMap nowMap = new LightMap("now-map", "Light on the pan of the design at hand");
    private final Label keptName = label("kept-name", "which");
    private final Label nowName = label("now-name", "which");
    private final Label sentence = label("beside-sentence", "lead");
    private final Label readout = label("beside-readout", "quiet");
    private final ProgressBar progress = new ProgressBar(0);
    private final GridPane table = new GridPane();

    /** Follows the model. */
    public BesidePane(
            BesideModel model, ObservableValue<UnitSystem> units, ObservableValue<Theme> theme, TakeAway takeAway) {
        this.model = model;
        this.units = units;
        getStyleClass().add("beside-pane");
        getStylesheets().add(BesidePane.class.getResource("beside.css").toExternalForm());
        setMinSize(0, 0);
        ThreeParts parts = new ThreeParts(titled(keptName, keptMap), middle(), titled(nowName, nowMap));
        VBox.setVgrow(parts, Priority.ALWAYS);
        getChildren().addAll(head(takeAway), parts);
        model.stateProperty().addListener((value, before, now) -> show());
        units.addListener((value, before, now) -> show());
        theme.addListener((value, before, now) -> wear(now));
        keptMap.readoutProperty().addListener((value, before, now) -> read());
        nowMap.readoutProperty().addListener((value, before, now) -> read());
        wear(theme.getValue());
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

    private static Node titled(Label head, LightMap map) {
        VBox box = new VBox(head, map);
        box.setMinSize(0, 0);
        box.setAlignment(Pos.TOP_CENTER);
        VBox.setVgrow(map, Priority.ALWAYS);
        return box;
    }

    private Node head(TakeAway takeAway) {
        Label title = new Label("Side by side, one scale of colours");
        title.getStyleClass().add("title");
        title.setMinWidth(0);
        Region between = new Region();
        HBox.setHgrow(between, Priority.ALWAYS);
        SaveMenu save = new SaveMenu("beside-save", "Save what differs between the two", takeAway);
        save.setMinWidth(Region.USE_PREF_SIZE);
        save.add("Both as a picture", FileKind.PICTURE, "compare", () -> {
            UnitSystem system = units.getValue();
            return bytes(c -> ComparePicture.bytes(c, system));
        });
        save.add("Both as a table", FileKind.TABLE, "compare", () -> bytes(CompareCsv::bytes));
        save.add("Both as figures", FileKind.FIGURES, "compare", () -> bytes(CompareJson::bytes));
        HBox head = new HBox(
                6,
                title,
                between,
                button(
                        "go-back",
                        "Go back to the kept one",
                        "The kept design comes back to be changed; undo takes that back",
                        model::goBack),
                button("swap", "Swap", "The kept design is at hand, the one at hand is kept", model::swap),
                button("drop", "Drop", "Nothing is kept any more", model::drop),
                save);
        head.setAlignment(Pos.CENTER_LEFT);
        return head;
    }

    private static Button button(String id, String words, String meaning, Runnable action) {
        Button button = new Button(words);
        button.setId(id);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setTooltip(new Tooltip(meaning));
        button.setAccessibleHelp(meaning);
        button.setOnAction(e -> action.run());
        return button;
    }

    private Optional<Callable<byte[]>> bytes(Function<Comparison, byte[]> maker) {
        return model.stateProperty()
                .get()
                .figures()
                .map(PairFigures::comparison)
                .map(c -> () -> maker.apply(c));
    }

    private Node middle() {
        table.setId("beside-table");
        table.setHgap(10);
        table.setVgap(3);
        for (int k = 0; k < COLUMNS; k++) {
            ColumnConstraints column = new ColumnConstraints();
            boolean last = k == COLUMNS - 1;
            column.setMinWidth(last ? 0 : Region.USE_PREF_SIZE);
            column.setHgrow(last ? Priority.ALWAYS : Priority.NEVER);
            table.getColumnConstraints().add(column);
        }
        widthProperty().addListener((value, before, now) -> {
            if (before.doubleValue() < ROOMY != now.doubleValue() < ROOMY) {
                Platform.runLater(this::show);
            }
        });
        progress.setMaxWidth(Double.MAX_VALUE);
        progress.setMinHeight(4);
        progress.setPrefHeight(4);
        progress.setAccessibleText("How far the pair has come");
        VBox inside = new VBox(6, sentence, progress, table, readout);
        inside.getStyleClass().add("beside-words");
        ScrollPane scroll = new ScrollPane(inside);
        scroll.setId("beside-scroll");
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setMinSize(0, 0);
        return scroll;
    }

    private void wear(Theme theme) {
        keptMap.wear(theme);
        nowMap.wear(theme);
    }

    private void show() {
        BesideState state = model.stateProperty().get();
        if (!state.isKept()) {
            return;
        }
        UnitSystem system = units.getValue();
        state.keptResult().ifPresent(r -> keptMap.show(r, false, state.top(), system));
        state.nowResult().ifPresent(r -> nowMap.show(r, state.nowEarlier(), state.top(), system));
        keptName.setText(state.name(true));
        nowName.setText(state.name(false));
        sentence.setText(state.sentence(system));
        progress.setProgress(state.pair().done());
        progress.setVisible(state.pair().working() && !state.paired());
        fill(state, system);
    }

    private void fill(BesideState state, UnitSystem system) {
        table.getChildren().clear();
        int row = 0;
        List<PairFigures.Row> figures = state.figures().map(f -> f.rows(system)).orElse(List.of());
        table.addRow(row++, cell("", "quiet"), cell("kept", "which"), cell("at hand", "which"), cell("", "quiet"));
        for (PairFigures.Row figure : figures) {
            add(row++, figure, "");
        }
        for (PairFigures.Row key : state.differing()) {
            add(row++, key, "quiet");
        }
    }

    private void add(int row, PairFigures.Row figure, String style) {
        table.addRow(
                row,
                cell(figure.name(), "quiet"),
                cell(figure.kept(), style),
                cell(figure.now(), style),
                cell(figure.difference(), "difference"));
    }

    private Label cell(String text, String style) {
        Label cell = new Label(text);
        cell.setMaxWidth(getWidth() < ROOMY && !style.equals("difference") ? NARROW_CELL : WIDE_CELL);
        cell.setWrapText(true);
        cell.setMinHeight(Region.USE_PREF_SIZE);
        cell.getStyleClass().add(style);
        return cell;
    }

    private void read() {
        String kept = keptMap.readoutProperty().get();
        String now = nowMap.readoutProperty().get();
        readout.setText(!kept.isEmpty() ? "Kept: " + kept : now.isEmpty() ? "" : "At hand: " + now);
    }
}
