package simmerpoint.study.design;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import simmerpoint.heat.HeatLevel;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.aim.AimAgain;
import simmerpoint.study.aim.AimTolerance;
import simmerpoint.study.likely.LikelyStudy;
import simmerpoint.study.paired.GluingLuck;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedTrace;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.LikelyResult;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/**
 * Looks for dishes that do what is wanted: the fewest panels and the smallest dish, the focal length that suits them best,
 * and all that lies between. What the search finds with few rays is traced anew with many, another seed, and made a little
 * larger where it falls short.
 */
public final class DesignStudy {
    /** Rays for each dish of the search. */
    public static final long SEARCH_RAYS = 1L << 13;

    /** Watts of the other fronts, as shares of what is wanted. */
    private static final double[] SHARES = {0.75, 1, 1.25};

    private static final double FRONTS_DONE = 0.7;
    private static final int MOST_STEPS = 8;

    /** 2^{@value} drawn cookers of each dish shown. */
    private static final int COOKERS = 6;

    private static final double SURE = 2;

    /** One in five normal values lies lower than this many standard deviations below the mean. */
    private static final double FOUR_IN_FIVE = 0.8416;

    private final Scenario scenario;
    private final DesignGoal goal;
    private final DesignLimits limits;
    private final TraceOptions options;
    private final TraceOptions check;
    private final Progress progress;
    private final DesignTrials trials;
    private final CheckedScenario base;
    private double lastDone;
    private String lastDetail = "";

    private DesignStudy(
            CheckedScenario base,
            Scenario scenario,
            DesignGoal goal,
            DesignLimits limits,
            TraceOptions options,
            Progress progress) {
        this.base = base;
        this.scenario = scenario;
        this.goal = goal;
        this.limits = limits;
        this.options = options.withPrecision(0).withRays(Math.min(SEARCH_RAYS, options.rays()));
        check = options.withPrecision(0).withSeed(options.seed() + 1);
        this.progress = progress;
        trials = new DesignTrials(base, this.options, (done, detail) -> progress.report(lastDone, lastDetail));
    }

    /** Progress of one part of the work, remembered for those who only ask whether to go on. */
    private Progress part(double from, double to) {
        return (done, detail) -> {
            lastDone = from + (to - from) * done;
            lastDetail = detail;
            return progress.report(lastDone, detail);
        };
    }

    /**
     * Searches.
     *
     * @param base the scenario of which another dish is sought
     * @throws ScenarioException if the scenario itself is not good
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static DesignResult run(
            CheckedScenario base, DesignGoal goal, DesignLimits limits, TraceOptions options, Progress progress)
            throws ScenarioException {
        return new DesignStudy(base, base.atOneMoment(), goal, limits, options, progress).run();
    }

    /**
     * Cooking power with which a heat level begins for the pan of {@code scenario}, the light shared between its faces as it is
     * now.
     *
     * @return W; infinite if no light gets there
     * @throws ImpossibleSetupException if the pan cannot stand as asked
     */
    public static double wattsFor(HeatLevel level, Scenario scenario, TraceOptions options, Progress progress) {
        PairedWatts now = PairedStudy.watts(List.of(scenario), options.withRays(SEARCH_RAYS), progress)
                .get(0);
        return now.heat().orElseThrow().beginsWithPowerLikely(level);
    }

    private DesignResult run() {
        long start = System.nanoTime();
        List<DesignResult.Front> fronts = new ArrayList<>();
        List<DesignSearch.Found> wanted = List.of();
        for (int k = 0; k < SHARES.length; k++) {
            double watts = goal.watts() + (SHARES[k] - 1) * Math.abs(goal.watts());
            Progress here = part(FRONTS_DONE * k / SHARES.length, FRONTS_DONE * (k + 1) / SHARES.length);
            List<DesignSearch.Found> front = new DesignSearch(trials, limits).front(watts, here);
            fronts.add(new DesignResult.Front(
                    watts, front.stream().map(DesignSearch.Found::candidate).toList()));
            wanted = SHARES[k] == 1 ? front : wanted;
        }
        List<DesignChoice> choices = checked(wanted);
        boolean none = choices.isEmpty();
        Optional<DesignChoice> bound = none ? strongest() : Optional.empty();
        Map<DesignLimits.Limit, DishCandidate> loosened = none ? loosened() : Map.of();
        return new DesignResult(
                scenario,
                goal,
                limits,
                choices,
                fronts,
                bound,
                loosened,
                new DesignResult.Run(
                        trials.traced(),
                        options.rays(),
                        check.rays(),
                        options.seed(),
                        check.seed(),
                        options.threads(),
                        (System.nanoTime() - start) * 1e-9));
    }

    /** A dish and its trace with the rays and the seed of the check. */
    private record Checked(DishCandidate candidate, PairedTrace traced) {}

    private List<DesignChoice> checked(List<DesignSearch.Found> front) {
        List<Checked> good = new ArrayList<>();
        Progress here = part(FRONTS_DONE, 0.9);
        for (int k = 0; k < front.size(); k++) {
            here.report((double) k / front.size(), "checking with another seed");
            int smallest = good.isEmpty()
                    ? Integer.MAX_VALUE
                    : good.get(good.size() - 1).candidate().diameterCentimetres();
            largeEnough(front.get(k).candidate())
                    .filter(checked -> checked.candidate().diameterCentimetres() < smallest)
                    .ifPresent(good::add);
        }
        return choices(good, part(0.9, 1));
    }

    /** The dish traced anew; larger by a centimetre as long as it falls short by more than chance allows. */
    private Optional<Checked> largeEnough(DishCandidate candidate) {
        for (int step = 0; step <= MOST_STEPS; step++) {
            int diameter = candidate.diameterCentimetres() + step;
            DishCandidate larger = new DishCandidate(candidate.layout(), diameter, candidate.focalCentimetres());
            Optional<Scenario> allowed =
                    diameter > limits.diameter().to() ? Optional.empty() : trials.allowed(larger, limits);
            if (allowed.isEmpty()) {
                return Optional.empty();
            }
            Checked checked = traced(larger, allowed.get());
            if (reaches(checked.traced().watts()) && reachesMostly(allowed.get())) {
                return Optional.of(checked);
            }
        }
        return Optional.empty();
    }

    private Checked traced(DishCandidate candidate, Scenario withIt) {
        return new Checked(
                candidate,
                PairedStudy.traces(List.of(withIt), check, part(lastDone, lastDone))
                        .get(0));
    }

    private boolean reaches(PairedWatts traced) {
        Estimate watts = traced.useful();
        boolean enough = watts.value() + SURE * watts.standardError() >= goal.watts();
        if (!enough || goal.level().isEmpty()) {
            return enough;
        }
        double missing = -traced.heat().orElseThrow().spareWatts(goal.level().get());
        return missing <= SURE * watts.standardError();
    }

    /** Whether four in five dishes built with this care do it: mean less 0.84 standard deviations, if the luck is normal. */
    private boolean reachesMostly(Scenario withIt) {
        if (!GluingLuck.isThere(List.of(withIt))) {
            return true;
        }
        GluingLuck luck = GluingLuck.of(List.of(withIt), check, part(lastDone, lastDone));
        return luck.mean(this::spare) - FOUR_IN_FIVE * luck.spread(this::spare) >= 0;
    }

    /** Watts beyond what is wanted. */
    private double spare(List<PairedWatts> dish) {
        double watts = dish.get(0).useful().value() - goal.watts();
        return goal.level()
                .map(level -> Math.min(watts, dish.get(0).heat().orElseThrow().spareWatts(level)))
                .orElse(watts);
    }

    private List<DesignChoice> choices(List<Checked> dishes, Progress here) {
        List<Scenario> scenarios =
                dishes.stream().map(dish -> dish.traced().watts().scenario()).toList();
        List<AimAgain> again = AimAgain.of(scenarios, AimTolerance.USUAL_LOSS, check, here);
        List<DesignChoice> out = new ArrayList<>();
        for (int k = 0; k < dishes.size(); k++) {
            PairedTrace traced = dishes.get(k).traced();
            out.add(new DesignChoice(
                    dishes.get(k).candidate(),
                    scenarios.get(k),
                    traced.watts().useful(),
                    traced.watts().absorbed(),
                    traced.trace().spot().peakFlux(),
                    scenarios.get(k).dish().largestPanel(),
                    scenarios.get(k).panHeightMetres(),
                    again.get(k),
                    likely(dishes.get(k).candidate()),
                    cost(scenarios.get(k))));
        }
        return out;
    }

    /** Empty if the dish is none that a file can hold. */
    private Optional<LikelyResult> likely(DishCandidate candidate) {
        try {
            return Optional.of(LikelyStudy.run(base.with(candidate.keys()), COOKERS, check, Progress.NONE));
        } catch (ScenarioException e) {
            return Optional.empty();
        }
    }

    private OptionalDouble cost(Scenario withIt) {
        return limits.cost().map(cost -> cost.of().apply(withIt)).orElse(OptionalDouble.empty());
    }

    private Optional<DesignChoice> strongest() {
        return new DesignSearch(trials, limits)
                .strongest(part(0.7, 0.8))
                .map(DesignSearch.Found::candidate)
                .map(candidate ->
                        traced(candidate, trials.allowed(candidate, limits).orElseThrow()))
                .map(checked -> choices(List.of(checked), part(0.8, 0.8)).get(0));
    }

    private Map<DesignLimits.Limit, DishCandidate> loosened() {
        Map<DesignLimits.Limit, DishCandidate> out = new EnumMap<>(DesignLimits.Limit.class);
        double from = 0.8;
        for (DesignLimits.Limit limit : DesignLimits.Limit.values()) {
            from += 0.03;
            if (limits.has(limit)) {
                new DesignSearch(trials, limits.without(limit))
                        .first(goal.watts(), part(from - 0.03, from))
                        .ifPresent(found -> out.put(limit, found.candidate()));
            }
        }
        return out;
    }
}
