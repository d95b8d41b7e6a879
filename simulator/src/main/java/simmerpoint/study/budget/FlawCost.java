package simmerpoint.study.budget;

import simmerpoint.sampling.Estimate;

/**
 * What one flaw costs, W, above 0 for a loss. Standard errors come from pairs of traces that share their samples
 * and, where panels are glued askew, from the luck of gluing.
 *
 * @param flaw which
 * @param offInTurn what the cooker as built would gain without this flaw, all others staying
 * @param onAlone what a perfect cooker would lose by this flaw alone
 */
public record FlawCost(Flaw flaw, Estimate offInTurn, Estimate onAlone) {}
