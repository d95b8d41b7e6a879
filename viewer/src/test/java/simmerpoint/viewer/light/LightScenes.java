package simmerpoint.viewer.light;

import simmerpoint.safety.SafetyStudy;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.viewer.document.ScenarioDocument;

/** The light of the example, cast once for all tests with few rays. */
final class LightScenes {
    private static LightFound found;

    private LightScenes() {}

    static Scenario scenario() {
        return new ScenarioDocument().readProperty().get().scenario();
    }

    static synchronized LightFound found() {
        if (found == null) {
            TraceOptions few = TraceOptions.defaults().withRays(1 << 16).withThreads(2);
            found = LightFound.of(SafetyStudy.light(scenario(), few, Progress.NONE));
        }
        return found;
    }
}
