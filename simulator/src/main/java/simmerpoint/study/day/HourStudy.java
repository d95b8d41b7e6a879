package simmerpoint.study.day;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import simmerpoint.heat.balance.CookingModel;
import simmerpoint.heat.balance.StandardCookingPower;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.SiteConditions;
import simmerpoint.setup.FocusTravel;
import simmerpoint.setup.StandGeometry;
import simmerpoint.study.aim.AimAgain;
import simmerpoint.study.aim.AimTolerance;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.MaximumFlux;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.ReplicateWorkers;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.study.trace.TraceStudy;
import simmerpoint.sun.BeamRange;
import simmerpoint.sun.SunMoment;
import simmerpoint.sun.SunMotion;
import simmerpoint.sun.Sunlight;
import simmerpoint.target.Ledger;

/** One cooker at any instant: traced anew at the sun's elevation then, with the same samples every time. */
final class HourStudy {
    private final Scenario scenario;
    private final SiteConditions outdoors;
    private final CookingModel cooking;
    private final TraceOptions options;
    private final boolean walks;

    /**
     * For one cooker.
     *
     * @param walks whether to find out how often to aim at each instant, which takes several times as long as its light
     */
    HourStudy(Scenario scenario, boolean walks, TraceOptions options) {
        this.scenario = scenario;
        this.walks = walks;
        this.options = options;
        outdoors = scenario.site().orElseThrow(() -> new IllegalArgumentException("a day needs a place"));
        cooking = scenario.cooking()
                .orElseThrow(() -> new IllegalArgumentException("a day needs a pan, not a bare disc"))
                .cooking();
    }

    /**
     * One instant.
     *
     * @param hour what is there
     * @param rays traced for its light
     */
    record Traced(DayHour hour, long rays) {}

    /** All instants, several at once, in their order; {@code words} tell what is worked on when so many are done. */
    List<Traced> each(List<ZonedDateTime> times, IntFunction<String> words, Progress progress) {
        int n = times.size();
        if (n == 0) {
            return List.of();
        }
        Traced[] found = new Traced[n];
        int threads = Math.min(options.threads(), n);
        TraceOptions each = options.withThreads(Math.max(1, options.threads() / n));
        Progress telling =
                (done, detail) -> progress.report(done, words.apply((int) Math.min(n - 1, Math.floor(done * n))));
        try (ReplicateWorkers workers = new ReplicateWorkers(threads, n, telling)) {
            workers.run(0, 1, (k, watch) -> {
                found[k] = at(times.get(k), each, (done, detail) -> {
                    watch.step(0, 1);
                    return true;
                });
                watch.step(1, 1);
            });
        }
        return List.of(found);
    }

    private Traced at(ZonedDateTime time, TraceOptions with, Progress progress) {
        SunMoment moment = SunMoment.at(outdoors.place(), time);
        BeamRange beam = outdoors.sky().at(moment);
        double elevation = moment.position().elevationRadians();
        StandGeometry stand = StandGeometry.of(
                scenario.dish(),
                elevation,
                scenario.aim().mountMetres(),
                scenario.heights().tripodHeightMetres(),
                scenario.stand());
        if (!(beam.likelyWattsPerSquareMetre() > 0)) {
            return new Traced(dark(moment, beam, stand, "no direct sunlight comes through the air"), 0);
        }
        Scenario then = scenario.withSun(new Sunlight(
                elevation, beam.likelyWattsPerSquareMetre(), scenario.sun().shape()));
        try {
            TraceResult traced = TraceStudy.run(then, with, progress);
            Optional<FocusTravel> walk = walks ? walk(moment, then, with, progress) : Optional.empty();
            HourLight light = light(beam.likelyWattsPerSquareMetre(), traced);
            return new Traced(
                    new DayHour(moment, beam, stand, walk, Optional.of(light), ""),
                    traced.run().rays());
        } catch (ImpossibleSetupException e) {
            return new Traced(dark(moment, beam, stand, e.getMessage()), 0);
        }
    }

    private static DayHour dark(SunMoment moment, BeamRange beam, StandGeometry stand, String why) {
        return new DayHour(moment, beam, stand, Optional.empty(), Optional.empty(), why);
    }

    /** How often to aim then, and how far the focus walks in between. */
    private static Optional<FocusTravel> walk(SunMoment moment, Scenario then, TraceOptions with, Progress progress) {
        SunMotion motion = SunMotion.at(moment);
        return AimAgain.at(moment, then, AimTolerance.USUAL_LOSS, with, progress)
                .minutes()
                .map(minutes -> FocusTravel.of(
                        then.dish(),
                        then.aim(),
                        minutes.value(),
                        then.stand().pullBackMetres(),
                        then.sun().elevationRadians(),
                        motion));
    }

    private HourLight light(double beam, TraceResult traced) {
        return new HourLight(
                traced.ledger(),
                new HourHeat(traced.heat().orElseThrow(), cooking),
                traced.spot().peakFlux(),
                MaximumFlux.of(traced),
                limits(traced.ledger(), beam),
                Optional.empty());
    }

    private static List<LightLimit> limits(Ledger ledger, double beam) {
        List<LightLimit> limits = new ArrayList<>();
        add(limits, LightLimit.Kind.WEAK_BEAM, 1 - beam / StandardCookingPower.STANDARD_IRRADIANCE);
        add(
                limits,
                LightLimit.Kind.MISSES,
                ledger.missed().value() / ledger.reflected().value());
        add(
                limits,
                LightLimit.Kind.CLIMBS_WALL,
                ledger.wall().value() / ledger.caught().value());
        limits.sort(Comparator.comparingDouble(LightLimit::share).reversed());
        return limits;
    }

    private static void add(List<LightLimit> limits, LightLimit.Kind kind, double share) {
        if (share >= LightLimit.LEAST) {
            limits.add(new LightLimit(kind, share));
        }
    }
}
