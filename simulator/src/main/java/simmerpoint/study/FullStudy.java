package simmerpoint.study;

import java.util.Optional;
import java.util.function.Supplier;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.aim.AimPlan;
import simmerpoint.study.aim.AimResult;
import simmerpoint.study.aim.AimStudy;
import simmerpoint.study.budget.BudgetResult;
import simmerpoint.study.budget.BudgetStudy;
import simmerpoint.study.day.DayPlan;
import simmerpoint.study.day.DayResult;
import simmerpoint.study.day.DayStudy;
import simmerpoint.study.likely.LikelyStudy;
import simmerpoint.study.pan.HeightSearch;
import simmerpoint.study.pan.PanResult;
import simmerpoint.study.pan.PanStudy;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.LazyValue;
import simmerpoint.study.trace.LikelyResult;
import simmerpoint.study.trace.MaximumFlux;
import simmerpoint.study.trace.PartialProgress;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;

/** Everything a builder asks of one scenario, one after the other: watts, the pan's place, the day, aiming, flaws. */
public final class FullStudy {
    private static final double PLACED = 0.25;
    private static final double PASSED = 0.4;
    private static final double AIMED = 0.75;
    private static final long BUDGET_RAYS = 1L << 15;

    private FullStudy() {}

    /**
     * What was found.
     *
     * @param trace the scenario as it stands
     * @param pan where its pan stands for what; empty for a bare disc
     * @param day the day of the scenario; empty for a bare disc and where no place is named
     * @param aim how exactly and how often to aim; empty if there is no aim to lose
     * @param budget what each flaw costs
     */
    public record Result(
            TraceResult trace,
            Optional<PanResult> pan,
            Optional<DayResult> day,
            Optional<AimResult> aim,
            BudgetResult budget) {
        /** The flux that cautions go by, W/m²: the largest of trace, pan and day. */
        public double cautionFlux() {
            double hottest = Math.max(
                    MaximumFlux.of(trace), pan.map(PanResult::cautionFlux).orElse(0.0));
            return Math.max(hottest, day.map(DayResult::cautionFlux).orElse(0.0));
        }
    }

    /**
     * Studies what was read with {@code options} for each part and {@code aiming} for the aim.
     *
     * @throws ImpossibleSetupException if the things named cannot stand as asked
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static Result run(CheckedScenario read, AimPlan aiming, TraceOptions options, Progress progress) {
        Scenario scenario = read.scenario();
        Progress first = new PartialProgress(progress, 0, PLACED);
        Supplier<LikelyResult> likely = new LazyValue<>(() -> LikelyStudy.withShares(read, options, Progress.NONE));
        Optional<PanResult> pan = scenario.cooking().map(kitchen -> PanStudy.run(read, likely, options, first));
        TraceResult trace = pan.map(PanResult::base).orElseGet(() -> TraceStudy.run(scenario, options, first));
        Optional<DayResult> day = scenario.cooking()
                .flatMap(kitchen -> scenario.site())
                .map(outdoors -> DayPlan.hourly(outdoors.when().toLocalDate()))
                .map(plan -> DayStudy.run(read, plan, options, new PartialProgress(progress, PLACED, PASSED)));
        Optional<AimResult> aim = aim(read, aiming, options, new PartialProgress(progress, PASSED, AIMED));
        BudgetResult budget = BudgetStudy.run(scenario, forBudget(options), new PartialProgress(progress, AIMED, 1));
        return new Result(
                trace.withLikely(likely.get()).withBetterHeight(HeightSearch.of(scenario, options, Progress.NONE)),
                pan,
                day,
                aim,
                budget.withLikely(likely.get()));
    }

    /** A quarter of the rays where many are asked for: of most flaws the luck of gluing leaves more doubt than these do. */
    private static TraceOptions forBudget(TraceOptions options) {
        return options.withRays(Math.min(options.rays(), Math.max(BUDGET_RAYS, options.rays() / 4)));
    }

    /** Empty where the dish cannot stand dead on or then throws no light on the target: the aim is then the least worry. */
    private static Optional<AimResult> aim(
            CheckedScenario read, AimPlan plan, TraceOptions options, Progress progress) {
        try {
            return Optional.of(AimStudy.run(read, plan, options, false, progress));
        } catch (ImpossibleSetupException e) {
            return Optional.empty();
        }
    }
}
