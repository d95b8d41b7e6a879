package simmerpoint.study.design;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import simmerpoint.heat.HeatLevel;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.study.aim.AimAgain;
import simmerpoint.study.aim.AimTolerance;
import simmerpoint.study.build.BuildTrace;
import simmerpoint.study.build.ShapeTolerance;
import simmerpoint.study.build.ShapeTolerances;
import simmerpoint.study.likely.LikelyStudy;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedTrace;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.pan.HeightSearch;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.LikelyResult;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.ReplicateCaster;
import simmerpoint.study.trace.TraceOptions;

/**
 * Looks for dishes that do what is wanted: the fewest panels and the smallest dish, the focal length that suits them best,
 * and all that lies between. A dish does it if four in five cookers built so do, over all doubts. What the search finds with few
 * rays is made larger until that holds, and traced anew with many rays and another seed.
 */
public final class DesignStudy {
    /** Rays for each dish of the search. */
    public static final long SEARCH_RAYS = 1L << 13;

    /** Watts of the other fronts, as shares of what is wanted. */
    private static final double[] SHARES = {0.75, 1, 1.25};

    private static final int ASKED = 1;

    private static final double FRONTS_DONE = 0.7;

    /** Four in five cookers are never held to bring less than this share of the watts as given. */
    private static final double LEAST_SHARE = 0.4;

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
        List<List<DishCandidate>> wanted = List.of();
        double margin = margin();
        for (int k = 0; k < SHARES.length; k++) {
            double watts = goal.watts() + (SHARES[k] - 1) * Math.abs(goal.watts());
            Progress here = part(FRONTS_DONE * k / SHARES.length, FRONTS_DONE * (k + 1) / SHARES.length);
            DesignSearch search = new DesignSearch(trials, limits);
            List<DesignSearch.Found> front = search.front(withMargin(watts, margin), here);
            fronts.add(new DesignResult.Front(
                    watts, front.stream().map(DesignSearch.Found::candidate).toList()));
            wanted = k == ASKED ? alternatives(front, search) : wanted;
        }
        List<DesignChoice> choices = checked(wanted);
        boolean none = choices.isEmpty();
        if (!none) {
            fronts.set(ASKED, new DesignResult.Front(goal.watts(), candidates(choices)));
        }
        Optional<DesignChoice> bound = none ? strongest() : Optional.empty();
        Map<DesignLimits.Limit, DishCandidate> loosened = none ? loosened(margin) : Map.of();
        return new DesignResult(
                scenario,
                goal,
                limits,
                choices,
                fronts,
                bound,
                loosened,
                tolerances(choices),
                choices.stream().findFirst().flatMap(few -> HeightSearch.of(few.scenario(), options, part(1, 1))),
                new DesignResult.Run(
                        trials.traced(),
                        options.rays(),
                        check.rays(),
                        options.seed(),
                        check.seed(),
                        options.threads(),
                        (System.nanoTime() - start) * 1e-9));
    }

    /**
     * Share of the watts as given that four in five cookers like the scenario's fall short by at most: what the search, which knows
     * no doubts, has to aim higher.
     */
    private double margin() {
        if (!ReplicateCaster.hasRoom(scenario)) {
            return 0;
        }
        double given = PairedStudy.watts(List.of(scenario), options, part(0, 0))
                .get(0)
                .useful()
                .value();
        double assured = LikelyStudy.assured(base, Optional.empty(), LikelyStudy.FOR_RANGE, options, part(0, 0));
        return given > 0 ? Math.max(0, 1 - Math.max(LEAST_SHARE, assured / given)) : 0;
    }

    private static double withMargin(double watts, double margin) {
        return watts + Math.abs(watts) * margin / (1 - margin);
    }

    /** Each dish of a front before others of its size that may do as well. */
    private static List<List<DishCandidate>> alternatives(List<DesignSearch.Found> front, DesignSearch search) {
        return front.stream()
                .map(found -> Stream.concat(Stream.of(found.candidate()), search.rivals(found).stream())
                        .toList())
                .toList();
    }

    /** A dish, its trace with the rays and the seed of the check, and what is likely of it. */
    private record Checked(DishCandidate candidate, PairedTrace traced, LikelyResult likely) {}

    private static List<DishCandidate> candidates(List<DesignChoice> choices) {
        return choices.stream().map(DesignChoice::candidate).toList();
    }

    private List<DesignChoice> checked(List<List<DishCandidate>> front) {
        List<Checked> good = new ArrayList<>();
        Progress here = part(FRONTS_DONE, 0.9);
        int grown = 0;
        for (int k = 0; k < front.size(); k++) {
            here.report((double) k / front.size(), "checking with another seed");
            int most = good.isEmpty()
                    ? limits.diameter().to()
                    : good.get(good.size() - 1).candidate().diameterCentimetres() - 1;
            Optional<DishCandidate> large = smallest(front.get(k), most, grown);
            int found = front.get(k).get(0).diameterCentimetres();
            grown = large.map(c -> c.diameterCentimetres() - found).orElse(grown);
            large.map(this::traced)
                    .filter(checked -> goal.isReached(checked.likely()))
                    .ifPresent(good::add);
        }
        return choices(good, part(0.9, 1));
    }

    /** The smallest of the alternatives made large enough. */
    private Optional<DishCandidate> smallest(List<DishCandidate> alternatives, int most, int grown) {
        Optional<DishCandidate> best = Optional.empty();
        for (DishCandidate candidate : alternatives) {
            int below = best.map(c -> c.diameterCentimetres() - 1).orElse(most);
            Optional<DishCandidate> large = new LargeEnough(candidate, goal.watts(), this::spare).upTo(below, grown);
            best = large.isPresent() ? large : best;
        }
        return best;
    }

    /** Watts that four in five such dishes have beyond what is wanted; not a number if it is not allowed. */
    private double spare(DishCandidate candidate) {
        if (trials.allowed(candidate, limits).isEmpty()) {
            return Double.NaN;
        }
        double assured = LikelyStudy.assured(
                read(candidate), goal.level(), LikelyStudy.FOR_RANGE, options, part(lastDone, lastDone));
        return goal.level().isPresent() ? assured : assured - goal.watts();
    }

    private Checked traced(DishCandidate candidate) {
        Scenario withIt = trials.allowed(candidate, limits).orElseThrow();
        PairedTrace traced = PairedStudy.traces(List.of(withIt), check, part(lastDone, lastDone))
                .get(0);
        LikelyResult likely =
                LikelyStudy.run(read(candidate), LikelyStudy.FOR_RANGE, options, part(lastDone, lastDone));
        return new Checked(candidate, traced, likely);
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
                    dishes.get(k).likely(),
                    cost(scenarios.get(k))));
        }
        return out;
    }

    /** The file with this dish. */
    private CheckedScenario read(DishCandidate candidate) {
        try {
            return base.with(candidate.keys());
        } catch (ScenarioException e) {
            throw new IllegalStateException("a dish that was built cannot be read", e);
        }
    }

    /** Of the dish with the fewest panels, which comes first. */
    private List<ShapeTolerance> tolerances(List<DesignChoice> choices) {
        return choices.isEmpty()
                ? List.of()
                : ShapeTolerances.of(
                        choices.get(0).scenario(),
                        check.withRays(Math.min(check.rays(), BuildTrace.USUAL_RAYS)),
                        part(1, 1));
    }

    private OptionalDouble cost(Scenario withIt) {
        return limits.cost().map(cost -> cost.of().apply(withIt)).orElse(OptionalDouble.empty());
    }

    private Optional<DesignChoice> strongest() {
        return new DesignSearch(trials, limits)
                .strongest(part(0.7, 0.8))
                .map(DesignSearch.Found::candidate)
                .map(this::traced)
                .map(checked -> choices(List.of(checked), part(0.8, 0.8)).get(0));
    }

    private Map<DesignLimits.Limit, DishCandidate> loosened(double margin) {
        Map<DesignLimits.Limit, DishCandidate> out = new EnumMap<>(DesignLimits.Limit.class);
        double from = 0.8;
        for (DesignLimits.Limit limit : DesignLimits.Limit.values()) {
            from += 0.03;
            if (limits.has(limit)) {
                new DesignSearch(trials, limits.without(limit))
                        .first(withMargin(goal.watts(), margin), part(from - 0.03, from))
                        .ifPresent(found -> out.put(limit, found.candidate()));
            }
        }
        return out;
    }
}
