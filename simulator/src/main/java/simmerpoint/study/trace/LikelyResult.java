package simmerpoint.study.trace;

import java.util.List;
import java.util.Optional;
import simmerpoint.heat.BoilingOutcome;
import simmerpoint.heat.HeatLevel;
import simmerpoint.heat.HeatLevelRange;
import simmerpoint.uncertainty.LikelyRange;

/**
 * What is likely, over all doubts. The likely figure is the median; four in five such cookers lie between low and high.
 *
 * @param power cooking power, of a bare disc the caught watts, W
 * @param lightPerLoss light taken up ÷ factor of the dry losses, W: what hot metal and oil go by
 * @param boil whether and when the water boils; empty for a bare disc
 * @param level heat level; empty for a bare disc
 * @param assured what four in five such cookers reach
 * @param shares where the range of the power comes from, the largest share first; the last is the luck of gluing and what causes do
 *     together
 * @param cookers number of cookers drawn
 */
public record LikelyResult(
        LikelyRange power,
        LikelyRange lightPerLoss,
        Optional<BoilingOutcome> boil,
        Optional<HeatLevelRange> level,
        Assured assured,
        List<DoubtShare> shares,
        int cookers) {
    /**
     * What four in five reach: one in five stays below.
     *
     * @param power cooking power, of a bare disc the caught watts, W
     * @param level heat level; the lowest for a bare disc
     */
    public record Assured(double power, HeatLevel level) {
        /** Share of cookers that stay below. */
        public static final double BELOW = 0.2;
    }

    /** Keeps a copy of the list. */
    public LikelyResult {
        shares = List.copyOf(shares);
    }

    /** The same with other shares. */
    public LikelyResult withShares(List<DoubtShare> better) {
        return new LikelyResult(power, lightPerLoss, boil, level, assured, better, cookers);
    }

    /** The cause whose measurement would narrow the range most; empty if no cause that can be measured brings anything. */
    public Optional<DoubtShare> worthMeasuring() {
        return shares.stream()
                .filter(s -> s.share() > 0 && !s.measurement().isEmpty())
                .findFirst();
    }
}
