package simmerpoint.viewer.workspace;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.dialog.Dialogs;
import simmerpoint.viewer.dialog.FileExport;
import simmerpoint.viewer.document.ScenarioDocument;
import simmerpoint.viewer.live.LiveResults;
import simmerpoint.viewer.live.LiveState;
import simmerpoint.viewer.live.PanelResults;
import simmerpoint.viewer.live.PanelState;
import simmerpoint.viewer.live.StudyState;
import simmerpoint.viewer.theme.Theme;

/**
 * What every view works on.
 *
 * @param document the open scenario; gets all changes
 * @param live its quick answers; the value may be null
 * @param studies its slower ones
 * @param panels what is known of single panels and rays; the value may be null
 * @param units metric or inch
 * @param theme light or dark
 * @param export writes results to files
 * @param dialogs asks for files
 * @param asked how results are traced
 * @param delivery runs work on the thread of the window
 * @param tell shows a sentence
 */
public record Workspace(
        ScenarioDocument document,
        ObservableValue<LiveState> live,
        ObservableValue<StudyState> studies,
        ObservableValue<PanelState> panels,
        ObservableValue<UnitSystem> units,
        ObservableValue<Theme> theme,
        FileExport export,
        Dialogs dialogs,
        TraceOptions asked,
        Executor delivery,
        Consumer<String> tell) {
    /** With the results of a window. */
    public static Workspace of(
            ScenarioDocument document,
            LiveResults live,
            PanelResults panels,
            ObservableValue<UnitSystem> units,
            ObservableValue<Theme> theme,
            FileExport export,
            Dialogs dialogs,
            TraceOptions asked,
            Executor delivery,
            Consumer<String> tell) {
        return new Workspace(
                document,
                live.stateProperty(),
                live.studiesProperty(),
                panels.stateProperty(),
                units,
                theme,
                export,
                dialogs,
                asked,
                delivery,
                tell);
    }

    /** The scenario in force. */
    public static ObservableValue<Scenario> scenarioOf(ScenarioDocument document) {
        return Bindings.createObjectBinding(() -> document.readProperty().get().scenario(), document.readProperty());
    }

    /** The scenario in force. */
    public Scenario scenario() {
        return document.readProperty().get().scenario();
    }

    /** The finished result of the scenario in force; only such are written to files. */
    public Optional<TraceResult> settled() {
        LiveState now = live.getValue();
        return now != null && now.settled() && now.current() ? now.result() : Optional.empty();
    }
}
