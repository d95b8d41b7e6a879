package simmerpoint.trial.fit;

/**
 * Two flaws together.
 *
 * @param first one
 * @param second the other
 * @param probability that both are there and nothing else
 */
public record FlawPair(TrialFlaw first, TrialFlaw second, double probability) {}
