package simmerpoint.heat;

import java.util.OptionalDouble;

/** Whether and when a pan boils. */
public sealed interface BoilingOutcome {
    /**
     * It boils.
     *
     * @param seconds from the start to boiling
     */
    record Boils(LikelyRange seconds) implements BoilingOutcome {}

    /**
     * It depends on losses that nobody knows well enough.
     *
     * @param share of pans like this one that boil, 0 to 1
     * @param likelySeconds time to boil for the likely losses, if it boils with them
     * @param soonestSeconds one pan in ten is sooner, or the soonest of those that boil
     * @param settlesCelsius where it settles; at local boiling for those that boil
     */
    record MayBoil(double share, OptionalDouble likelySeconds, double soonestSeconds, LikelyRange settlesCelsius)
            implements BoilingOutcome {}

    /**
     * It never boils, or takes longer than a day.
     *
     * @param settlesCelsius where it settles
     */
    record Never(LikelyRange settlesCelsius) implements BoilingOutcome {}
}
