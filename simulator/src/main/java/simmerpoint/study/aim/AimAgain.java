package simmerpoint.study.aim;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Aim;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.ImpossibleSetupException;
import simmerpoint.study.trace.PartialProgress;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.sun.SunMoment;
import simmerpoint.sun.Sunlight;

/**
 * When to aim again, by one definition for all commands: the minutes from a dead-on aim until the {@linkplain
 * PairedWatts#useful watts} have fallen by a share below what aiming again at that moment would give. The sun goes its real way
 * if place and time are known, else straight at its fastest, up, down, right or left, whichever costs the share soonest (all four go at one speed, so the least angle is the soonest). The
 * beam stays that of the aiming.
 *
 * @param way of the sun
 * @param minutes until the share is lost; empty if it is not within {@link AimTolerance#RANGE} or before the sun is down, or if
 *     nothing useful is there to be lost
 */
public record AimAgain(SunTrack way, Optional<Estimate> minutes) {
    private static final long FIRST_RAYS = 1L << 12;
    private static final long MORE = 4;
    private static final double WANTED_ERROR = 0.04;

    private static final List<MisaimDirection> DRIFTS =
            Arrays.stream(MisaimDirection.values()).filter(way -> !way.isTurn()).toList();

    /** How far the sun has gone by then, rad; empty as {@link #minutes}. */
    public Optional<Estimate> radians() {
        return minutes.map(found -> found.times(way.after(found.value()).radians() / found.value()));
    }

    /**
     * For one scenario, whatever its own aim is.
     *
     * @param lossShare above 0, below 1
     * @throws ImpossibleSetupException if the dish cannot stand dead on
     * @throws java.util.concurrent.CancellationException if {@code progress} says stop
     */
    public static AimAgain of(Scenario scenario, double lossShare, TraceOptions options, Progress progress) {
        return of(List.of(scenario), lossShare, options, progress).get(0);
    }

    /** The minutes for a scenario with the usual loss; empty as {@link #minutes}, or if the dish cannot stand dead on. */
    public static Optional<Estimate> usualMinutes(Scenario scenario, TraceOptions options, Progress progress) {
        try {
            return of(scenario, AimTolerance.USUAL_LOSS, options, progress).minutes();
        } catch (ImpossibleSetupException e) {
            return Optional.empty();
        }
    }

    /** For many scenarios, all traced together: few rays, up to {@code options.rays()} for those not good to 4 % yet. */
    public static List<AimAgain> of(
            List<Scenario> scenarios, double lossShare, TraceOptions options, Progress progress) {
        return search(
                scenarios.stream()
                        .map(s -> new Task(s, SunTrack.real(s).map(List::of).orElseGet(() -> fastest(s))))
                        .toList(),
                lossShare,
                options,
                progress);
    }

    /** For a scenario whose sun stands as at {@code moment}. */
    public static AimAgain at(
            SunMoment moment, Scenario scenario, double lossShare, TraceOptions options, Progress progress) {
        return along(SunTrack.real(moment), scenario, lossShare, options, progress);
    }

    /** For a sun that goes one way. */
    static AimAgain along(SunTrack way, Scenario scenario, double lossShare, TraceOptions options, Progress progress) {
        return search(List.of(new Task(scenario, List.of(way))), lossShare, options, progress)
                .get(0);
    }

    private static List<SunTrack> fastest(Scenario scenario) {
        return DRIFTS.stream().map(way -> SunTrack.fastest(scenario, way)).toList();
    }

    /** A scenario and the ways its sun may go. */
    private record Task(Scenario scenario, List<SunTrack> ways) {
        Scenario deadOn() {
            return scenario.withAim(scenario.aim().deadOn());
        }
    }

    private static List<AimAgain> search(List<Task> tasks, double lossShare, TraceOptions options, Progress progress) {
        List<AimAgain> out = new ArrayList<>();
        tasks.forEach(task -> out.add(new AimAgain(task.ways().get(0), Optional.empty())));
        List<Integer> open = new ArrayList<>();
        for (int k = 0; k < tasks.size(); k++) {
            open.add(k);
        }
        double from = 0;
        for (long rays = Math.min(options.rays(), FIRST_RAYS);
                !open.isEmpty() && rays <= options.rays();
                rays *= MORE) {
            TraceOptions with = options.withPrecision(0).withRays(rays);
            PartialProgress part = new PartialProgress(progress, from, (1 + from) / 2);
            List<AimAgain> found = once(open.stream().map(tasks::get).toList(), lossShare, with, part);
            for (int k = 0; k < open.size(); k++) {
                out.set(open.get(k), found.get(k));
            }
            open.removeIf(k -> out.get(k)
                    .minutes()
                    .filter(m -> m.standardError() > WANTED_ERROR * m.value())
                    .isEmpty());
            from = (1 + from) / 2;
        }
        return List.copyOf(out);
    }

    private static List<AimAgain> once(List<Task> tasks, double lossShare, TraceOptions options, Progress progress) {
        List<PairedWatts> deadOn = PairedStudy.watts(
                tasks.stream().map(Task::deadOn).toList(), options, new PartialProgress(progress, 0, 0.1));
        List<List<ToleranceSearch>> groups = new ArrayList<>();
        for (int k = 0; k < tasks.size(); k++) {
            PairedWatts from = deadOn.get(k);
            groups.add(tasks.get(k).ways().stream()
                    .map(way -> search(from, way, lossShare))
                    .toList());
        }
        ToleranceSearch.runSoonest(groups, options, new PartialProgress(progress, 0.1, 1));
        Iterator<ToleranceSearch> done =
                groups.stream().flatMap(List::stream).toList().iterator();
        return tasks.stream().map(task -> soonest(task.ways(), done)).toList();
    }

    private static AimAgain soonest(List<SunTrack> ways, Iterator<ToleranceSearch> done) {
        List<AimAgain> all = new ArrayList<>();
        for (SunTrack way : ways) {
            all.add(new AimAgain(way, done.next().found().map(angle -> angle.times(1 / way.radiansPerMinute()))));
        }
        return all.stream()
                .min(Comparator.comparingDouble(
                        again -> again.minutes().map(Estimate::value).orElse(Double.POSITIVE_INFINITY)))
                .orElseThrow();
    }

    /** By angle, which is time at the sun's speed of the aiming. */
    private static ToleranceSearch search(PairedWatts deadOn, SunTrack way, double lossShare) {
        Scenario straight = deadOn.scenario();
        double rate = way.radiansPerMinute();
        AimFeasibility room = new AimFeasibility(straight);
        DoubleFunction<Aim> left = angle -> {
            SunTrack.Drift drift = way.after(angle / rate);
            return straight.aim().plusDrift(drift.upRadians(), drift.sideRadians());
        };
        DoubleFunction<Scenario> again = angle ->
                straight.withSun(raised(straight.sun(), way.after(angle / rate).upRadians()));
        double reach = ToleranceSearch.reach(
                angle ->
                        room.allows(left.apply(angle)) && new AimFeasibility(again.apply(angle)).allows(straight.aim()),
                Math.min(AimTolerance.RANGE, rate * way.minutesToFollow()));
        return new ToleranceSearch(
                deadOn, angle -> straight.withAim(left.apply(angle)), Optional.of(again), lossShare, reach);
    }

    private static Sunlight raised(Sunlight sun, double radians) {
        double elevation = Math.min(Math.PI / 2, sun.elevationRadians() + radians);
        return new Sunlight(elevation, sun.beamWattsPerSquareMetre(), sun.shape());
    }
}
