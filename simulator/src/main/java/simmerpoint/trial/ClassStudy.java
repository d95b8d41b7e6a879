package simmerpoint.trial;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.trial.log.ClassLogs;
import simmerpoint.trial.log.TrialLog;
import simmerpoint.trial.power.PowerTest;

/** Ranks several cookers by their logs. */
public final class ClassStudy {
    private ClassStudy() {}

    /**
     * The ranking. A cooker whose logs do not go with the scenario is left out.
     *
     * @param read the scenario that all were built by
     * @throws ScenarioException if none is left
     */
    public static ClassResult run(CheckedScenario read, ClassLogs logs, TraceOptions options, Progress progress)
            throws ScenarioException {
        List<ClassResult.Cooker> found = new ArrayList<>();
        Map<String, String> leftOut = new LinkedHashMap<>(logs.leftOut());
        ScenarioException first = null;
        int done = 0;
        for (Map.Entry<String, List<TrialLog>> each : logs.cookers().entrySet()) {
            if (!progress.report((double) done++ / logs.cookers().size(), each.getKey())) {
                throw new CancellationException();
            }
            try {
                found.add(new ClassResult.Cooker(
                        0, each.getKey(), TrialStudy.run(read, each.getValue(), options, Progress.NONE)));
            } catch (ScenarioException e) {
                first = first == null ? e : first;
                leftOut.put(each.getKey(), e.getMessage());
            }
        }
        if (found.isEmpty() && first != null) {
            throw first;
        }
        found.sort(Comparator.comparingDouble(ClassStudy::lessFirst));
        return new ClassResult(read, basis(found), ranked(found), leftOut, options.seed());
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
