package simmerpoint.trial.fit;

import java.util.List;

/**
 * How likely a flaw is behind a trial.
 *
 * @param flaw which
 * @param probability that it alone is there, 0 to 1
 * @param way of its likeliest size
 * @param size expected where it is there: SI units or radians, a share, or 1 for what is or is not
 * @param curves what it does to the curve of each log at its likeliest size, °C
 * @param likeliest its likeliest size
 */
public record FlawLikelihood(
        TrialFlaw flaw, double probability, FlawStep.Way way, double size, List<double[]> curves, FlawStep likeliest) {}
