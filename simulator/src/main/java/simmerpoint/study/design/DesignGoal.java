package simmerpoint.study.design;

import java.util.Optional;
import simmerpoint.heat.HeatLevel;
import simmerpoint.study.trace.LikelyResult;

/**
 * What a design must do in the sun of its scenario.
 *
 * @param watts of cooking power wanted (of a bare disc, caught), W
 * @param level heat level to be reached with the likely losses, if one was asked for
 */
public record DesignGoal(double watts, Optional<HeatLevel> level) {
    /** Whether four in five such cookers do it. */
    boolean isReached(LikelyResult likely) {
        LikelyResult.Assured assured = likely.assured();
        return level.map(wanted -> assured.level().compareTo(wanted) >= 0).orElse(assured.power() >= watts);
    }
}
