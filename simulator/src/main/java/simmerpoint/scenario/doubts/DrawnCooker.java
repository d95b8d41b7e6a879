package simmerpoint.scenario.doubts;

import simmerpoint.heat.losses.LossFactors;
import simmerpoint.scenario.Scenario;

/**
 * One cooker that the scenario may turn out to be.
 *
 * @param scenario with the figures of this draw
 * @param losses factors of its pan's losses
 * @param draw number of the draw
 * @param build which of many dishes built with the same care it is, for the luck of gluing; 0 is the one that is traced
 */
public record DrawnCooker(Scenario scenario, LossFactors losses, int draw, long build) {}
