package simmerpoint.heat;

import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;
import simmerpoint.uncertainty.LikelyRange;

/** Whether and when a pan boils. */
public sealed interface BoilingOutcome {
    /**
     * It boils.
     *
     * @param seconds from the start to boiling
     */
    record Boils(LikelyRange seconds) implements BoilingOutcome {}

    /**
     * It boils for some of the possible losses.
     *
     * @param share of the sample of losses with which it boils, 0 to 1
     * @param likelySeconds time to boil for the likely losses, if it boils with them
     * @param soonestSeconds 10th percentile of the time to boil, or the least if fewer than a tenth boil
     * @param settlesCelsius steady-state temperature; local boiling for those that boil
     */
    record MayBoil(double share, OptionalDouble likelySeconds, double soonestSeconds, LikelyRange settlesCelsius)
            implements BoilingOutcome {}

    /**
     * It never boils, or takes longer than a day.
     *
     * @param settlesCelsius steady-state temperature
     */
    record Never(LikelyRange settlesCelsius) implements BoilingOutcome {}

    /**
     * That of one pan whose losses are known.
     *
     * @param seconds time to boil; empty if it never does
     * @param settlesCelsius steady-state temperature, asked for only then
     */
    static BoilingOutcome exact(OptionalDouble seconds, DoubleSupplier settlesCelsius) {
        return seconds.isPresent()
                ? new Boils(LikelyRange.exact(seconds.getAsDouble()))
                : new Never(LikelyRange.exact(settlesCelsius.getAsDouble()));
    }
}
