package simmerpoint.study.aim;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.stream.IntStream;
import simmerpoint.sampling.Estimate;
import simmerpoint.sampling.Replicates;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Aim;
import simmerpoint.study.paired.PairedStudy;
import simmerpoint.study.paired.PairedWatts;
import simmerpoint.study.trace.PartialProgress;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/**
 * What the cook gets between two aimings: the dish stands still while the sun goes its way. Beam and elevation stay
 * those of the aiming; only the drift grows. Means are by Simpson's rule over {@value #SINGLE} or {@value #LONG} equal steps.
 */
final class AimIntervals {
    private static final int SINGLE = 8;
    private static final int LONG = 2 * SINGLE;

    private final PairedWatts deadOn;
    private final SunTrack way;
    private final double lossShare;
    private final AimFeasibility room;
    private final double rate;
    private final double follow;

    AimIntervals(PairedWatts deadOn, SunTrack way, double lossShare) {
        this.deadOn = deadOn;
        this.way = way;
        this.lossShare = lossShare;
        room = new AimFeasibility(deadOn.scenario());
        rate = way.radiansPerMinute();
        follow = way.minutesToFollow();
    }

    /**
     * All of them.
     *
     * @param single until the loss is reached, or as long as the way is looked at
     * @param twice the same for the time that aiming ahead lasts; without a lead for twice the time or until the sun is down
     * @param lead aiming ahead, for as long as neither end loses more than the share
     */
    record Found(AimInterval single, AimInterval twice, Optional<AimLead> lead) {}

    /** From a dead-on aim, with the {@code minutes} of {@link AimAgain}. */
    Found find(Optional<Estimate> minutes, TraceOptions options, Progress progress) {
        double most = Math.min(AimTolerance.RANGE, follow * rate);
        double single = minutes.map(Estimate::value).orElse(most / rate);
        OptionalDouble share = minutes.isPresent() ? AimLead.share(deadOn.scenario()) : OptionalDouble.empty();
        double twice = share.isPresent()
                ? ledMinutes(share.getAsDouble(), options, new PartialProgress(progress, 0, 0.6))
                : Math.min(2 * single, follow);
        return traced(single, twice, share, options, new PartialProgress(progress, 0.6, 1));
    }

    private ToleranceSearch search(DoubleFunction<Aim> aims, double most) {
        return new ToleranceSearch(deadOn, aims, lossShare, ToleranceSearch.reach(room, aims, most));
    }

    /** The longest time, with the lead that belongs to it, at neither end of which more than the share is lost. */
    private double ledMinutes(double share, TraceOptions options, Progress progress) {
        double most = Math.min(AimTolerance.RANGE, follow * rate / 2);
        List<ToleranceSearch> ends = List.of(
                search(half -> led(share, half / rate, 0), most), search(half -> led(share, half / rate, 2), most));
        ToleranceSearch.run(ends, options, progress);
        double half = ends.stream()
                .flatMap(end -> end.found().stream())
                .mapToDouble(Estimate::value)
                .min()
                .orElse(most);
        return 2 * half / rate;
    }

    /** The aim with the lead for a half interval, {@code halves} of them after the aiming. */
    private Aim led(double share, double halfMinutes, double halves) {
        SunTrack.Drift half = way.after(halfMinutes);
        return drifted(share * half.upRadians(), share * half.sideRadians(), halves * halfMinutes);
    }

    private Found traced(double single, double twice, OptionalDouble share, TraceOptions options, Progress progress) {
        SunTrack.Drift half = way.after(twice / 2);
        double up = share.orElse(0) * half.upRadians();
        double side = share.orElse(0) * half.sideRadians();
        boolean leads = share.isPresent() && room.allows(drifted(up, side, twice));
        List<Scenario> all = new ArrayList<>();
        times(single, SINGLE).forEach(t -> all.add(scenario(0, 0, t)));
        times(twice, LONG).forEach(t -> all.add(scenario(0, 0, t)));
        if (leads) {
            times(twice, LONG).forEach(t -> all.add(scenario(up, side, t)));
        }
        List<PairedWatts> watts = PairedStudy.watts(all, options, progress);
        int second = SINGLE + 1;
        int third = second + LONG + 1;
        Optional<AimLead> lead = leads
                ? Optional.of(
                        new AimLead(share.getAsDouble(), up, side, interval(twice, watts.subList(third, watts.size()))))
                : Optional.empty();
        return new Found(
                interval(single, watts.subList(0, second)), interval(twice, watts.subList(second, third)), lead);
    }

    private static List<Double> times(double minutes, int steps) {
        return IntStream.rangeClosed(0, steps)
                .mapToObj(k -> minutes * k / steps)
                .toList();
    }

    private Scenario scenario(double turnUp, double turnSide, double minutes) {
        return deadOn.scenario().withAim(drifted(turnUp, turnSide, minutes));
    }

    private Aim drifted(double turnUp, double turnSide, double minutes) {
        SunTrack.Drift drift = way.after(minutes);
        return deadOn.scenario().aim().plusTurn(turnUp, turnSide).plusDrift(drift.upRadians(), drift.sideRadians());
    }

    private static AimInterval interval(double minutes, List<PairedWatts> watts) {
        int steps = watts.size() - 1;
        List<AimInterval.Moment> moments = IntStream.rangeClosed(0, steps)
                .mapToObj(k ->
                        new AimInterval.Moment(minutes * k / steps, watts.get(k).useful()))
                .toList();
        Estimate mean = Replicates.mean(watts.get(0).caughtByReplicate().length, r -> simpson(watts, r));
        Estimate least = moments.stream()
                .map(AimInterval.Moment::watts)
                .min(Comparator.comparingDouble(Estimate::value))
                .orElseThrow();
        return new AimInterval(minutes, mean, least, moments);
    }

    /** Mean of one replicate by Simpson's rule: weights 1, 4, 2, 4 … 4, 1, over three times the number of steps. */
    private static double simpson(List<PairedWatts> watts, int replicate) {
        int steps = watts.size() - 1;
        double sum = 0;
        for (int k = 0; k <= steps; k++) {
            double weight = k == 0 || k == steps ? 1 : k % 2 == 1 ? 4 : 2;
            sum += weight * watts.get(k).usefulByReplicate()[replicate];
        }
        return sum / (3.0 * steps);
    }
}
