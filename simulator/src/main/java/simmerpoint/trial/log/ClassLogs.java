package simmerpoint.trial.log;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The logs of a class.
 *
 * @param cookers logs of each cooker, by its name; at least one cooker
 * @param leftOut why a cooker's logs cannot be used, by its name
 */
public record ClassLogs(Map<String, List<TrialLog>> cookers, Map<String, String> leftOut) {
    /** Keeps its own maps in their order. */
    public ClassLogs {
        cookers = Collections.unmodifiableMap(new LinkedHashMap<>(cookers));
        leftOut = Collections.unmodifiableMap(new LinkedHashMap<>(leftOut));
    }
}
