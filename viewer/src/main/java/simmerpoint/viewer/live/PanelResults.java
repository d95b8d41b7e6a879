package simmerpoint.viewer.live;

import java.util.concurrent.Executor;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.trace.TraceOptions;

/** What is known of single panels and rays of a scenario that changes, as a property. */
public final class PanelResults implements AutoCloseable {
    private final ReadOnlyObjectWrapper<PanelState> state = new ReadOnlyObjectWrapper<>();
    private final PanelEngine engine;

    /**
     * Follows a scenario.
     *
     * @param scenario its value may be null only before the first
     * @param asked seed and threads
     * @param delivery the thread of the property
     */
    public PanelResults(ObservableValue<Scenario> scenario, TraceOptions asked, Executor delivery) {
        engine = new PanelEngine(asked, delivery, state::set);
        scenario.addListener((value, before, now) -> engine.show(now));
        if (scenario.getValue() != null) {
            engine.show(scenario.getValue());
        }
    }

    /** The newest state; null before the first. */
    public ReadOnlyObjectProperty<PanelState> stateProperty() {
        return state.getReadOnlyProperty();
    }

    @Override
    public void close() {
        engine.close();
    }
}
