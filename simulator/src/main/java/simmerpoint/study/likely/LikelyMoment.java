package simmerpoint.study.likely;

import simmerpoint.study.trace.LikelyResult;
import simmerpoint.uncertainty.LikelyRange;

/**
 * What is likely at one moment.
 *
 * @param result over all doubts
 * @param simmerSpareWatts watts beyond what a simmer takes; below 0 it does not simmer
 */
public record LikelyMoment(LikelyResult result, LikelyRange simmerSpareWatts) {}
