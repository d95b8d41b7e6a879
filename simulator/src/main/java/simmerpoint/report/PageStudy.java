package simmerpoint.report;

import java.util.concurrent.CompletableFuture;
import simmerpoint.safety.SafetyResult;
import simmerpoint.safety.SafetyStudy;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.SideWork;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.units.UnitSystem;
import simmerpoint.workshop.CookerStudy;

/**
 * Everything that the page tells of one cooker.
 *
 * @param cooker what it does and what to cut for it
 * @param safety what its light can burn
 */
public record PageStudy(CookerStudy cooker, SafetyResult safety) {
    /**
     * Studies what was read, its light in space beside all else: neither keeps two processors busy all the time.
     *
     * @param units of the builder
     * @param options for what the cooker does
     * @param forSafety for its light in space
     * @throws simmerpoint.study.trace.ImpossibleSetupException if the things named cannot stand as asked
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static PageStudy run(
            CheckedScenario read, UnitSystem units, TraceOptions options, TraceOptions forSafety, Progress progress) {
        CompletableFuture<TraceResult> trace = new CompletableFuture<>();
        try (SideWork<SafetyResult> safety = new SideWork<>(
                options.threads() > 1, asked -> SafetyStudy.run(read, trace::join, true, forSafety, asked))) {
            CookerStudy cooker = CookerStudy.run(read, units, options, progress);
            trace.complete(cooker.answers().trace());
            return new PageStudy(cooker, safety.result());
        } finally {
            trace.cancel(false);
        }
    }
}
