package simmerpoint.study.design;

import java.util.Optional;
import simmerpoint.heat.HeatLevel;

/**
 * What a design must do in the sun of its scenario.
 *
 * @param watts that the pan is to take up (caught by a bare disc), W
 * @param level heat level to be reached with the likely losses, if one was asked for
 */
public record DesignGoal(double watts, Optional<HeatLevel> level) {}
