package simmerpoint.viewer.live;

import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.trace.TraceOptions;

/**
 * Both lanes together, as properties to listen to: the quick answers, and in a pause the studies. Everything here is called and
 * changes on the one thread behind the executor; in the window that is the FX thread.
 */
public final class LiveResults implements AutoCloseable {
    private final ReadOnlyObjectWrapper<LiveState> state = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyObjectWrapper<StudyState> studies = new ReadOnlyObjectWrapper<>(StudyState.NOTHING_YET);
    private final LiveEngine engine;
    private final StudyEngine studyEngine;

    /** At rest. */
    public LiveResults(TraceOptions asked, Executor delivery) {
        engine = new LiveEngine(asked, delivery, this::arrived);
        studyEngine = new StudyEngine(asked, delivery, studies::set);
    }

    /** Asks for everything about {@code scenario} instead of any earlier one. */
    public void show(Scenario scenario) {
        studyEngine.stop();
        engine.show(scenario);
    }

    /** Shows {@code scenario} without an answer, and why there is none. */
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

    /** The quick lane; null before the first scenario. */
    public ReadOnlyObjectProperty<LiveState> stateProperty() {
        return state.getReadOnlyProperty();
    }

    /** The slower lane. */
    public ReadOnlyObjectProperty<StudyState> studiesProperty() {
        return studies.getReadOnlyProperty();
    }

    @Override
    public void close() {
        engine.close();
        studyEngine.close();
    }
}
