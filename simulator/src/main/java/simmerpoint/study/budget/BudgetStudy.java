package simmerpoint.study.budget;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import simmerpoint.sampling.Estimate;
import simmerpoint.sampling.Replicates;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.build.BuildTrace;
import simmerpoint.study.build.ShapeTolerances;
import simmerpoint.study.paired.GluingLuck;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.PartialProgress;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.ReplicateCaster;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;

/**
 * What each flaw costs. Every flaw that is there is switched off with all others on, and switched on with all others
 * off; then every figure is moved by a step. All traces share seed and samples, so differences are sure to a small part
 * of what each figure is.
 */
public final class BudgetStudy {
    /** Rays where none are asked for: what a flaw costs is then known to a few parts in a thousand of the watts, or better. */
    public static final long USUAL_RAYS = 1L << 16;

    /** Part of the work that goes into finding how many rays a wanted precision takes. */
    private static final double LOOK_SHARE = 0.1;

    private static final double GLUED = 0.3;

    /** Part of the work that goes into what flaws cost; the rest finds tolerances. */
    private static final double COSTS = 0.9;

    private final Scenario built;
    private final TraceOptions options;
    private final Progress progress;
    private final long start = System.nanoTime();
    private final List<Flaw> present = new ArrayList<>();
    private final List<Flaw> absent = new ArrayList<>();
    private final List<Flaw> fixed = new ArrayList<>();
    private final List<Scenario> scenarios = new ArrayList<>();
    private List<PairedWatts> watts = List.of();
    private Optional<GluingLuck> luck = Optional.empty();

    private BudgetStudy(Scenario built, TraceOptions asked, Progress progress) {
        this.built = built;
        if (asked.precision() > 0) {
            TraceResult look = TraceStudy.run(built, asked, new PartialProgress(progress, 0, LOOK_SHARE));
            options = asked.withPrecision(0).withRays(look.run().rays());
            this.progress = new PartialProgress(progress, LOOK_SHARE, 1);
        } else {
            options = asked;
            this.progress = progress;
        }
        Flaws.of(built).forEach(this::sort);
    }

    private void sort(Flaw flaw) {
        boolean locked = flaw.fixed().test(built);
        boolean there = !locked && flaw.isIn(built);
        (locked || (there && !stands(flaw.mended(built))) ? fixed : there ? present : absent).add(flaw);
    }

    /**
     * The budget of {@code scenario}.
     *
     * @throws ImpossibleSetupException if the things named cannot stand as asked
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static BudgetResult run(Scenario scenario, TraceOptions options, Progress progress) {
        BudgetResult costs = new BudgetStudy(scenario, options, new PartialProgress(progress, 0, COSTS)).run();
        TraceOptions few = options.withRays(Math.min(options.rays(), BuildTrace.USUAL_RAYS));
        return costs.withTolerances(ShapeTolerances.of(scenario, few, new PartialProgress(progress, COSTS, 1)));
    }

    private BudgetResult run() {
        List<Case> cases = cases();
        int asBuilt = add(built);
        int flawless = add(Flaws.mended(built, present));
        luck = GluingLuck.ifAny(scenarios, options, new PartialProgress(progress, 0, GLUED));
        List<StepRange> ranges = ranges();
        watts = PairedStudy.watts(scenarios, options, new PartialProgress(progress, GLUED, 1));
        List<FlawCost> costs = cases.stream()
                .map(c -> new FlawCost(c.flaw, cost(c.off, asBuilt), cost(flawless, c.alone)))
                .sorted(Comparator.comparingDouble(c -> -c.offInTurn().value()))
                .toList();
        IntToDoubleFunction total = r -> at(flawless, r) - at(asBuilt, r);
        return new BudgetResult(
                built,
                watts.get(asBuilt).useful(),
                watts.get(flawless).useful(),
                cost(flawless, asBuilt),
                costs,
                mean(r -> total.applyAsDouble(r)
                        - cases.stream()
                                .mapToDouble(c -> at(c.off, r) - at(asBuilt, r))
                                .sum()),
                mean(r -> total.applyAsDouble(r)
                        - cases.stream()
                                .mapToDouble(c -> at(flawless, r) - at(c.alone, r))
                                .sum()),
                absent,
                fixed,
                ranges.stream().map(r -> sensitivity(r, asBuilt)).toList(),
                new BudgetResult.Run(
                        options.seed(),
                        (long) ReplicateCaster.REPLICATES << ReplicateCaster.bitsFor(options.rays()),
                        scenarios.size(),
                        Math.min(options.threads(), ReplicateCaster.REPLICATES),
                        (System.nanoTime() - start) * 1e-9));
    }

    /** What one scenario has beyond another, with the luck of gluing in its error. */
    private Estimate cost(int with, int without) {
        Estimate sampled = mean(r -> at(with, r) - at(without, r));
        return luck.map(built -> built.widened(
                        sampled,
                        dishes -> dishes.get(with).useful().value()
                                - dishes.get(without).useful().value()))
                .orElse(sampled);
    }

    /** Where the two scenarios of a flaw stand among all. */
    private record Case(Flaw flaw, int off, int alone) {}

    private List<Case> cases() {
        List<Case> cases = new ArrayList<>();
        for (Flaw flaw : present) {
            List<Flaw> others = present.stream().filter(f -> !f.equals(flaw)).toList();
            cases.add(new Case(flaw, add(flaw.mended(built)), add(Flaws.mended(built, others))));
        }
        return cases;
    }

    /** Where the scenarios of a parameter's steps stand among all. */
    private record StepRange(Parameter parameter, List<ParameterStep> steps, int first) {}

    private List<StepRange> ranges() {
        List<StepRange> ranges = new ArrayList<>();
        for (Parameter parameter : SensitivityParameters.of(built)) {
            List<ParameterStep> steps = parameter.steps().apply(built).stream()
                    .filter(turn -> stands(turn.scenario()))
                    .toList();
            if (!steps.isEmpty()) {
                ranges.add(new StepRange(parameter, steps, scenarios.size()));
                steps.forEach(turn -> add(turn.scenario()));
            }
        }
        return ranges;
    }

    private Sensitivity sensitivity(StepRange range, int asBuilt) {
        List<Sensitivity.Step> steps = new ArrayList<>();
        for (int k = 0; k < range.steps.size(); k++) {
            int at = range.first + k;
            steps.add(new Sensitivity.Step(range.steps.get(k).way(), mean(r -> at(at, r) - at(asBuilt, r))));
        }
        if (steps.size() != 2) {
            return new Sensitivity(range.parameter, steps, Optional.empty(), Optional.empty());
        }
        int more = range.first;
        int less = more + 1;
        return new Sensitivity(
                range.parameter,
                steps,
                Optional.of(mean(r -> 0.5 * (at(more, r) - at(less, r)))),
                Optional.of(mean(r -> 0.5 * (at(more, r) + at(less, r)) - at(asBuilt, r))));
    }

    private int add(Scenario scenario) {
        scenarios.add(scenario);
        return scenarios.size() - 1;
    }

    private double at(int scenario, int replicate) {
        return watts.get(scenario).usefulByReplicate()[replicate];
    }

    private static Estimate mean(IntToDoubleFunction ofReplicate) {
        return Replicates.mean(ReplicateCaster.REPLICATES, ofReplicate);
    }

    /** Whether the pan stays clear of the mirror; the scenario as built is looked at elsewhere. */
    private boolean stands(Scenario other) {
        boolean sameRoom = other.setup().equals(built.setup()) && other.dish().equals(built.dish());
        return sameRoom || ReplicateCaster.hasRoom(other);
    }
}
