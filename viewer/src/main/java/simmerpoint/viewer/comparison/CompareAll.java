package simmerpoint.viewer.comparison;

import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import simmerpoint.answer.compare.CompareAnswer;
import simmerpoint.answer.compare.CompareWords;
import simmerpoint.drawing.chart.CompareChart;
import simmerpoint.report.ResultFiles;
import simmerpoint.study.compare.CompareStudy;
import simmerpoint.study.compare.Comparison;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.live.OnDemandStudy;
import simmerpoint.viewer.parts.AnswerView;
import simmerpoint.viewer.parts.DrawingView;
import simmerpoint.viewer.parts.StudyPane;
import simmerpoint.viewer.workspace.Workspace;

/** Kept designs: one of them held against the current design, or all of them together. */
public final class CompareAll extends VBox implements AutoCloseable {
    private static final int MOST_ROWS = 24;

    private final Workspace work;
    private final OnDemandStudy<Comparison> study;
    private final StackPane place = new StackPane();

    /** Of a model. */
    public CompareAll(Workspace work, ComparisonModel model) {
        this.work = work;
        setId("compare-all");
        getStyleClass().add("compare-all");
        getStylesheets().add(CompareAll.class.getResource("comparison.css").toExternalForm());
        study = new OnDemandStudy<>(
                "comparison",
                200,
                work.delivery(),
                (read, progress) -> CompareStudy.run(
                        model.variants(design ->
                                KeptList.name(model, design, work.units().getValue())),
                        work.asked().withPrecision(0),
                        progress));
        model.kept().addListener((ListChangeListener<KeptDesign>) change -> study.forget());
        Node pair = new ComparisonPane(model, work.units(), work.theme(), work.export());
        Node all = new StudyPane<>(
                        "compare-every",
                        "All kept designs and the current one, under the same light.",
                        work,
                        study,
                        this::page)
                .takenAway("compare", ResultFiles::of)
                .automatic();
        place.setMinSize(0, 0);
        VBox.setVgrow(place, Priority.ALWAYS);
        KeptList list = new KeptList(model, work.units());
        HBox.setHgrow(list, Priority.ALWAYS);
        ToggleGroup group = new ToggleGroup();
        ToggleButton one =
                choice("compare-pair", "Two at a time", "One kept design beside the current one", group, pair);
        ToggleButton every = choice("compare-together", "All together", "All kept designs in one picture", group, all);
        HBox head = new HBox(6, new KeepButton(model, work.live()), list, one, every);
        head.getStyleClass().add("compare-head");
        group.selectToggle(one);
        getChildren().addAll(head, place);
    }

    private ToggleButton choice(String id, String words, String meaning, ToggleGroup group, Node shown) {
        ToggleButton button = new ToggleButton(words);
        button.setId(id);
        button.setMinWidth(USE_PREF_SIZE);
        button.setTooltip(new Tooltip(meaning));
        button.setToggleGroup(group);
        button.setOnAction(e -> button.setSelected(true));
        button.selectedProperty().addListener((value, before, now) -> {
            if (now) {
                place.getChildren().setAll(shown);
            }
        });
        return button;
    }

    private Node page(Comparison result, UnitSystem units) {
        Label first = new Label(CompareAnswer.first(result, units));
        first.setWrapText(true);
        first.getStyleClass().add("lead");
        DrawingView chart = DrawingView.of(
                "compare-chart",
                "Watts of all compared designs",
                new CompareChart(result, MOST_ROWS, new CompareWords(result).where(), units),
                work.theme().getValue());
        return new VBox(
                8, first, chart, new AnswerView(CompareAnswer.of(result, units).sections(), true));
    }

    @Override
    public void close() {
        study.close();
    }
}
