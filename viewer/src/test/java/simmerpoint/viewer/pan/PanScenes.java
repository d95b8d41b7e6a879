package simmerpoint.viewer.pan;

import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.SimpleObjectProperty;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.pan.PanResult;
import simmerpoint.study.pan.PanStudy;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.units.UnitSystem;
import simmerpoint.viewer.ScriptedAsks;
import simmerpoint.viewer.dialog.FileExport;
import simmerpoint.viewer.document.ScenarioDocument;
import simmerpoint.viewer.live.LiveState;
import simmerpoint.viewer.live.StudyState;
import simmerpoint.viewer.theme.Theme;
import simmerpoint.viewer.workspace.Workspace;

/** A desk with the example and its answers, traced with few rays. */
final class PanScenes {
    static final TraceOptions FEW = TraceOptions.defaults().withRays(1 << 13);
    private static PanResult studied;

    final ScenarioDocument document = new ScenarioDocument();
    final SimpleObjectProperty<LiveState> live = new SimpleObjectProperty<>();
    final SimpleObjectProperty<StudyState> studies = new SimpleObjectProperty<>(StudyState.NOTHING_YET);
    final SimpleObjectProperty<UnitSystem> units = new SimpleObjectProperty<>(UnitSystem.METRIC);
    final SimpleObjectProperty<Theme> theme = new SimpleObjectProperty<>(Theme.LIGHT);

    /** The study of the example, made once for all tests. */
    static synchronized PanResult study(Scenario scenario) {
        if (studied == null || !studied.base().scenario().equals(scenario)) {
            studied = PanStudy.run(scenario, FEW, Progress.NONE);
        }
        return studied;
    }

    Scenario scenario() {
        return document.readProperty().get().scenario();
    }

    static LiveState answer(Scenario scenario) {
        TraceResult result = TraceStudy.run(scenario, FEW, Progress.NONE);
        return new LiveState(1, scenario, Optional.of(result), 1, true, Optional.empty());
    }

    static StudyState studied(PanResult result) {
        return new StudyState(
                Optional.of(result.base().scenario()),
                Optional.of(result),
                Optional.empty(),
                Optional.empty(),
                false,
                1,
                Optional.empty());
    }

    /** With light and curve of what lies on the desk. */
    PanScenes answered() {
        live.set(answer(scenario()));
        studies.set(studied(study(scenario())));
        return this;
    }

    PanScenes with(String key, String typed) {
        document.change(Map.of(key, typed));
        return this;
    }

    /** What views work on; files are asked for by {@code asks} and outcomes told to {@code told}. */
    Workspace work(ScriptedAsks asks, Consumer<String> told) {
        return new Workspace(
                document,
                live,
                studies,
                new SimpleObjectProperty<>(),
                units,
                theme,
                new FileExport(asks, Runnable::run, Runnable::run, told),
                asks,
                FEW,
                Runnable::run,
                told);
    }

    PullControl control() {
        return new PullControl(document, live, studies, units);
    }
}
