package simmerpoint.study.design;

import java.util.Optional;
import simmerpoint.heat.HeatLevel;

/**
 * What a design must do in the sun of its scenario.
 *
 * @param watts of cooking power wanted (of a bare disc, caught), W
 * @param level heat level to be reached with the likely losses, if one was asked for
 */
public record DesignGoal(double watts, Optional<HeatLevel> level) {}
