package simmerpoint.trial.fit;

/**
 * How likely a flaw is behind a trial.
 *
 * @param flaw which
 * @param probability that it alone is there, 0 to 1
 * @param way of its likeliest size
 * @param size expected where it is there: SI units or radians, a share, or 1 for what is or is not
 * @param middle that size in the scenario of the first log
 * @param less a standard deviation less
 * @param more a standard deviation more
 */
public record FlawLikelihood(
        TrialFlaw flaw,
        double probability,
        FlawStep.Way way,
        double size,
        FlawStep middle,
        FlawStep less,
        FlawStep more) {}
