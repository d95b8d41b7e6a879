package simmerpoint.workshop;

import java.util.Optional;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.FullStudy;
import simmerpoint.study.aim.AimPlan;
import simmerpoint.study.build.BuildTrace;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.PartialProgress;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.units.UnitSystem;

/**
 * Everything about one cooker: what it does and what to cut for it.
 *
 * @param answers what it does
 * @param cut what to cut, with its tolerances; empty if it cannot be built so
 * @param whyNotCut one sentence that says why; empty if it can
 */
public record CookerStudy(FullStudy.Result answers, Optional<CutPlan> cut, String whyNotCut) {
    private static final double ANSWERED = 0.9;

    /**
     * Studies what was read for a builder who measures in those units.
     *
     * @throws ImpossibleSetupException if the things named cannot stand as asked
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static CookerStudy run(CheckedScenario read, UnitSystem units, TraceOptions options, Progress progress) {
        FullStudy.Result answers =
                FullStudy.run(read, AimPlan.usual(units), options, new PartialProgress(progress, 0, ANSWERED));
        try {
            CutPlan plan = CutPlan.of(read, units).comparedWithSmaller(read);
            Progress rest = new PartialProgress(progress, ANSWERED, 1);
            return new CookerStudy(answers, Optional.of(traced(plan, answers.trace(), options, rest)), "");
        } catch (CuttingException e) {
            return new CookerStudy(answers, Optional.empty(), e.sentence());
        }
    }

    /**
     * What to cut alone, with watts and tolerances where the dish can be traced.
     *
     * @throws CuttingException if it cannot be built so
     */
    public static CutPlan cut(CheckedScenario read, UnitSystem units, TraceOptions options, Progress progress)
            throws CuttingException {
        CutPlan plan = CutPlan.of(read, units).comparedWithSmaller(read);
        if (read.timeless().isPresent()) {
            return plan;
        }
        try {
            TraceOptions few = options.withRays(BuildTrace.USUAL_RAYS);
            return plan.with(BuildTrace.run(read.scenario(), plan.checkedRadii(), few, progress));
        } catch (ImpossibleSetupException e) {
            return plan;
        }
    }

    private static CutPlan traced(CutPlan plan, TraceResult trace, TraceOptions options, Progress progress) {
        TraceOptions few = options.withRays(Math.min(options.rays(), BuildTrace.USUAL_RAYS));
        return plan.with(
                BuildTrace.run(plan.scenario(), Optional.of(trace.useful()), plan.checkedRadii(), few, progress));
    }
}
