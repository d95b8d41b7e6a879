package simmerpoint.study;

import java.util.Optional;
import simmerpoint.scenario.Scenario;

/**
 * Everything a builder asks of one scenario, one after the other: watts, the pan's place, the day.
 */
public final class WholeStudy {
    private static final double PAN_SHARE = 0.5;

    private WholeStudy() {}

    /**
     * What was found.
     *
     * @param trace the scenario as it stands
     * @param pan where its pan stands for what; empty for a bare disc
     * @param day the day of the scenario; empty for a bare disc and where no place is named
     */
    public record Result(TraceResult trace, Optional<PanResult> pan, Optional<DayResult> day) {}

    /**
     * Studies {@code scenario} with {@code options} for each part.
     *
     * @throws ImpossibleSetupException if the things named cannot stand as asked
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static Result run(Scenario scenario, TraceOptions options, Progress progress) {
        if (scenario.kitchen().isEmpty()) {
            return new Result(TraceStudy.run(scenario, options, progress), Optional.empty(), Optional.empty());
        }
        boolean placed = scenario.outdoors().isPresent();
        PanResult pan = PanStudy.run(scenario, options, placed ? new Part(progress, 0, PAN_SHARE) : progress);
        Optional<DayResult> day = scenario.outdoors()
                .map(outdoors -> DayStudy.run(
                        scenario,
                        DayPlan.hourly(outdoors.when().toLocalDate()),
                        options,
                        new Part(progress, PAN_SHARE, 1)));
        return new Result(pan.base(), Optional.of(pan), day);
    }
}
