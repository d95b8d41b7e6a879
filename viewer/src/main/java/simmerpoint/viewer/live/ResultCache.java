package simmerpoint.viewer.live;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import simmerpoint.scenario.Scenario;

/** Results of the last few scenarios, for undo and redo. Thread-safe. */
final class ResultCache<R> {
    /** A result with its maps takes a megabyte or two. */
    private static final int MOST = 8;

    private static final float USUAL_LOAD = 0.75f;

    private final Map<Scenario, R> results = new LinkedHashMap<>(MOST, USUAL_LOAD, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Scenario, R> eldest) {
            return size() > MOST;
        }
    };

    synchronized void put(Scenario scenario, R result) {
        results.put(scenario, result);
    }

    synchronized Optional<R> get(Scenario scenario) {
        return Optional.ofNullable(results.get(scenario));
    }
}
