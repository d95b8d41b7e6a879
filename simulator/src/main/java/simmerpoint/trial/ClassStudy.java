package simmerpoint.trial;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.trial.log.TrialLog;
import simmerpoint.trial.power.PowerTest;

/** Ranks several cookers by their logs. */
public final class ClassStudy {
    private ClassStudy() {}

    /**
     * The ranking.
     *
     * @param read the scenario that all were built by
     * @param logs of each cooker, by its name; at least one cooker
     */
    public static ClassResult run(
            CheckedScenario read, Map<String, List<TrialLog>> logs, TraceOptions options, Progress progress)
            throws ScenarioException {
        List<ClassResult.Cooker> found = new ArrayList<>();
        int done = 0;
        for (Map.Entry<String, List<TrialLog>> each : logs.entrySet()) {
            if (!progress.report((double) done++ / logs.size(), each.getKey())) {
                throw new CancellationException();
            }
            found.add(new ClassResult.Cooker(
                    0, each.getKey(), TrialStudy.run(read, each.getValue(), options, Progress.NONE)));
        }
        found.sort(Comparator.comparingDouble(ClassStudy::lessFirst));
        return new ClassResult(read, basis(found), ranked(found), options.seed());
    }

    private static double lessFirst(ClassResult.Cooker cooker) {
        return cooker.watts().map(w -> -w.value()).orElse(Double.POSITIVE_INFINITY);
    }

    private static List<ClassResult.Cooker> ranked(List<ClassResult.Cooker> sorted) {
        List<ClassResult.Cooker> ranked = new ArrayList<>();
        for (ClassResult.Cooker cooker : sorted) {
            int rank = cooker.watts().isPresent() ? ranked.size() + 1 : 0;
            ranked.add(new ClassResult.Cooker(rank, cooker.name(), cooker.trial()));
        }
        return ranked;
    }

    /** What all have in common; nothing where they differ. */
    private static PowerTest.Basis basis(List<ClassResult.Cooker> cookers) {
        List<PowerTest.Basis> all = cookers.stream()
                .map(c -> c.trial().power())
                .flatMap(Optional::stream)
                .map(PowerTest::basis)
                .distinct()
                .toList();
        return all.size() == 1 ? all.get(0) : PowerTest.Basis.NOTHING;
    }
}
