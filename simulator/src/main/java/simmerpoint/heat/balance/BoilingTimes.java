package simmerpoint.heat.balance;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Supplier;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.heat.losses.LossFactors;
import simmerpoint.heat.losses.LossSpread;
import simmerpoint.uncertainty.LikelyRange;

/** Combines the boiling times of equally likely pans into a {@link BoilingOutcome}. */
public final class BoilingTimes {
    /** Share of the set beyond either end of a {@link LikelyRange}. */
    private static final double TENTH = 0.1;

    private BoilingTimes() {}

    /**
     * The outcome over the pans of {@link LossSpread}.
     *
     * @param likely time to boil for the likely losses, s
     * @param seconds the same for given losses; may be less exact
     * @param settles steady-state temperature, °C, asked for only where it may never boil
     */
    static BoilingOutcome outcome(
            OptionalDouble likely, Function<LossFactors, OptionalDouble> seconds, Supplier<LikelyRange> settles) {
        double[] times = LossSpread.all().parallelStream()
                .mapToDouble(f -> seconds.apply(f).orElse(Double.POSITIVE_INFINITY))
                .toArray();
        return outcome(likely, times, settles);
    }

    /**
     * The outcome over equally likely pans.
     *
     * @param likely likely time to boil, s; empty if it is likely that it never boils
     * @param seconds time of each pan, infinite if it never boils
     * @param settles steady-state temperature, °C, asked for only where it may never boil
     */
    public static BoilingOutcome outcome(OptionalDouble likely, double[] seconds, Supplier<LikelyRange> settles) {
        double[] times = seconds.clone();
        Arrays.sort(times);
        double share = Arrays.stream(times).filter(Double::isFinite).count() / (double) times.length;
        if (likely.isPresent() && share > 1 - TENTH) {
            return new BoilingOutcome.Boils(LikelyRange.ofSample(likely.getAsDouble(), times));
        }
        if (likely.isEmpty() && share < TENTH) {
            return new BoilingOutcome.Never(settles.get());
        }
        double tenth = times[(int) Math.floor(TENTH * (times.length - 1))];
        double soonest = Double.isFinite(tenth) ? tenth : Math.min(times[0], likely.orElse(Double.POSITIVE_INFINITY));
        return new BoilingOutcome.MayBoil(share, likely, Math.min(soonest, likely.orElse(soonest)), settles.get());
    }
}
