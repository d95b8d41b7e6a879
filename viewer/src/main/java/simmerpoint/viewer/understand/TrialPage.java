package simmerpoint.viewer.understand;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import simmerpoint.answer.Section;
import simmerpoint.drawing.Drawing;
import simmerpoint.report.LessonFile;
import simmerpoint.scenario.Scenario;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.dialog.FileKind;
import simmerpoint.viewer.dialog.TakeAwayMenu;
import simmerpoint.viewer.parts.AnswerView;
import simmerpoint.viewer.parts.Buttons;
import simmerpoint.viewer.parts.DrawingView;
import simmerpoint.viewer.parts.StudyPane;
import simmerpoint.viewer.workspace.Workspace;

/** How good the built cooker is and what is wrong with it, from logs that are opened here or dropped on the window. */
final class TrialPage implements AutoCloseable {
    private static final double WIDEST = 900;
    private static final String BEFORE =
            "Logs of water heated in your dish, beside what this design should do. A sheet to fill in is under \u201cTake away\u201d.";
    private static final String HOW =
            "or drop logs anywhere on this window. A log is a CSV file whose first line names the "
                    + "columns, such as time_min,water_C,air_C; several are of one cooker, a folder is a class of cookers.";

    private final Workspace work;
    private final Consumer<LogsResult.Built> openBuilt;
    private final TrialModel model;

    /** {@code openBuilt} opens the scenario of a cooker as built. */
    TrialPage(Workspace work, Consumer<LogsResult.Built> openBuilt, long pauseMillis) {
        this.work = work;
        this.openBuilt = openBuilt;
        model = new TrialModel(work.asked(), pauseMillis, work.delivery());
    }

    Node pane() {
        StudyPane<LogsResult> pane = new StudyPane<>("trial", BEFORE, work, model.study(), this::page);
        return pane.needing(model::hasLogs)
                .takenAway("trial", LogsResult::files)
                .takenAway("trial", LogsResult::files)
                .takenAway(menu -> more(menu, pane))
                .asked(
                        Buttons.button(
                                "trial-open",
                                "Open logs\u2026",
                                "Choose one or more logs of water heated in one cooker",
                                () -> take(work.dialogs()
                                        .filesToOpen(
                                                "Open logs",
                                                FileKind.LOG,
                                                work.document().folder()))),
                        Buttons.button(
                                "trial-open-class",
                                "Open a class\u2026",
                                "Choose a folder in which every log is another cooker",
                                () ->
                                        take(work
                                                .dialogs()
                                                .folderToOpen(
                                                        "Open the folder of a class",
                                                        work.document().folder())
                                                .stream()
                                                .toList())),
                        how());
    }

    private static Label how() {
        Label how = new Label(HOW);
        how.setWrapText(true);
        how.setMinHeight(Region.USE_PREF_SIZE);
        how.setMaxWidth(Double.MAX_VALUE);
        how.getStyleClass().add("quiet");
        HBox.setHgrow(how, Priority.ALWAYS);
        return how;
    }

    /** Takes logs of one cooker, or the folder of a class. */
    void take(List<Path> files) {
        model.open(files, work.document().readProperty().get());
    }

    private TakeAwayMenu more(TakeAwayMenu menu, StudyPane<LogsResult> pane) {
        menu.addBytes(
                "The cooker as built",
                FileKind.SCENARIO,
                "as-built",
                () -> pane.current()
                        .flatMap(LogsResult::built)
                        .map(built -> () -> built.text().getBytes(StandardCharsets.UTF_8)));
        menu.addBytes("A sheet to fill in", new FileKind("Sheet", "pdf"), "log-sheet", this::sheet);
        return menu;
    }

    private Optional<Callable<byte[]>> sheet() {
        Scenario scenario = work.scenario();
        UnitSystem units = work.units().getValue();
        return scenario.cooking().map(pan -> () -> LessonFile.pdf(scenario, units));
    }

    private Node page(LogsResult result, UnitSystem units) {
        VBox page = new VBox(10);
        List<Section> sections = result.sections(units);
        page.getChildren().add(new AnswerView(sections.subList(0, 1), true));
        result.built()
                .ifPresent(built -> page.getChildren()
                        .add(Buttons.button(
                                "trial-open-built",
                                "Open the cooker as built",
                                "Open it as a scenario of its own, with the figures that the logs show; undo brings the planned one back",
                                () -> openBuilt.accept(built))));
        for (Drawing drawing : result.drawings(units)) {
            page.getChildren()
                    .add(DrawingView.of(
                                    "trial-chart",
                                    result.shown(),
                                    drawing,
                                    work.theme().getValue())
                            .widest(WIDEST));
        }
        page.getChildren().add(new AnswerView(sections.subList(1, sections.size()), true));
        return page;
    }

    @Override
    public void close() {
        model.close();
    }
}
