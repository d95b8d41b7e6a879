package simmerpoint.viewer.live;

import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.trace.TraceOptions;

/**
 * Results for the open scenario as properties: live traces, and studies once these have settled. All calls and changes are on
 * the thread of the executor; in the window that is the FX thread.
 */
public final class LiveResults implements AutoCloseable {
    private final ReadOnlyObjectWrapper<LiveState> state = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<StudyState> studies = new ReadOnlyObjectWrapper<>(StudyState.NOTHING_YET);
    private final LiveEngine engine;
    private final StudyEngine studyEngine;

    /** Idle. */
    public LiveResults(TraceOptions asked, Executor delivery) {
        engine = new LiveEngine(asked, delivery, this::arrived);
        studyEngine = new StudyEngine(asked, delivery, studies::set);
    }

    /** Starts everything for {@code scenario} and cancels earlier work. */
    public void show(Scenario scenario) {
        studyEngine.stop();
        engine.show(scenario);
    }

    /** The same for what was read, with the likely range over its doubts. */
    public void show(CheckedScenario read) {
        studyEngine.stop();
        engine.show(read);
    }

    /** Shows {@code scenario} without results, with the reason. */
    public void refuse(Scenario scenario, String why) {
        studyEngine.stop();
        engine.refuse(scenario, why);
    }

    private void arrived(LiveState newest) {
        state.set(newest);
        if (newest.settled() && newest.refusal().isEmpty()) {
            studyEngine.study(newest.scenario());
        }
    }

    /** State of the live traces; null before the first scenario. */
    public ReadOnlyObjectProperty<LiveState> stateProperty() {
        return state.getReadOnlyProperty();
    }

    /** State of the studies. */
    public ReadOnlyObjectProperty<StudyState> studiesProperty() {
        return studies.getReadOnlyProperty();
    }

    @Override
    public void close() {
        engine.close();
        studyEngine.close();
    }
}
