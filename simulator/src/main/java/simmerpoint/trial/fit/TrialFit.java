package simmerpoint.trial.fit;

import java.util.List;
import java.util.Optional;
import simmerpoint.scenario.doubts.Doubt;
import simmerpoint.uncertainty.LikelyRange;

/**
 * What logs say about a cooker by the model of its scenario.
 *
 * @param curves of every log
 * @param expected cooking power in the mean light and weather of the first log before the trial, W: four in five drawn cookers
 * @param watts the same by all that is known now, W
 * @param error its standard deviation, W
 * @param noFlaw probability that nothing is wrong beyond the usual doubts
 * @param flaws every flaw alone, the likeliest first
 * @param pairs two flaws together, the likeliest first
 * @param scatter how much more the logs scatter than instruments and gusts explain, in standard deviations; at least 1
 * @param causes what is known now of the cooker
 * @param next what to measure to tell the likeliest flaws apart; empty where no measurement that is known would
 */
public record TrialFit(
        List<FittedCurve> curves,
        LikelyRange expected,
        double watts,
        double error,
        double noFlaw,
        List<FlawLikelihood> flaws,
        List<FlawPair> pairs,
        double scatter,
        List<KnownCause> causes,
        Optional<NextMeasurement> next) {
    /** Standard deviations of a 95 % interval to each side. */
    public static final double REACH = 1.959964;

    /** A flaw this many times less likely than the likeliest cannot be left out. */
    private static final double NOT_TOLD_APART = 5;

    /**
     * What is known now of one cause of doubt that belongs to the cooker.
     *
     * @param doubt as it was before
     * @param mean now, in standard deviations of the doubt
     * @param deviation now, in the same
     * @param watts cooking power for one standard deviation of the doubt, W
     */
    public record KnownCause(Doubt doubt, double mean, double deviation, double watts) {}

    /** Keeps its own lists. */
    public TrialFit {
        curves = List.copyOf(curves);
        flaws = List.copyOf(flaws);
        pairs = List.copyOf(pairs);
        causes = List.copyOf(causes);
    }

    /** The same with what to measure next. */
    TrialFit with(Optional<NextMeasurement> measurement) {
        return new TrialFit(curves, expected, watts, error, noFlaw, flaws, pairs, scatter, causes, measurement);
    }

    /** Least of the 95 % interval of the cooking power, W. */
    public double lowWatts() {
        return watts - REACH * error;
    }

    /** Most of it, W. */
    public double highWatts() {
        return watts + REACH * error;
    }

    /** Whether it is likelier that something is wrong than that nothing is. */
    public boolean isFlawed() {
        return noFlaw < 0.5;
    }

    /** The likeliest flaw, if it alone is likelier than none. */
    public Optional<FlawLikelihood> likeliest() {
        return flaws.stream().findFirst().filter(f -> f.probability() > noFlaw);
    }

    /** Whether the logs tell the likeliest of no flaw and all flaws from the others. */
    public boolean isTold() {
        return likeliest()
                .map(f -> rivals().isEmpty() && noFlaw * NOT_TOLD_APART <= f.probability())
                .orElse(!isFlawed());
    }

    /** Whether no flaw is less likely than some flaw and yet cannot be left out. */
    public boolean mayBeFlawless() {
        return likeliest()
                .filter(f -> noFlaw * NOT_TOLD_APART > f.probability())
                .isPresent();
    }

    /** Flaws that cannot be left out although no flaw is likelier than each of them, in order. */
    public List<FlawLikelihood> suspects() {
        return likeliest().isPresent() || !isFlawed()
                ? List.of()
                : flaws.stream()
                        .filter(f -> f.probability() * NOT_TOLD_APART > noFlaw)
                        .toList();
    }

    /** Flaws that the logs cannot tell from the likeliest of them, in order. */
    public List<FlawLikelihood> rivals() {
        return flaws.stream()
                .skip(1)
                .filter(f -> f.probability() * NOT_TOLD_APART > flaws.get(0).probability())
                .toList();
    }
}
