package simmerpoint.trial;

import java.util.OptionalDouble;
import simmerpoint.study.trace.LikelyResult;

/**
 * Time to boil as measured and as expected.
 *
 * @param measuredSeconds from the first row; empty if it did not boil
 * @param startCelsius the water then
 * @param warmestCelsius the warmest water
 * @param expected of drawn cookers in the light and weather of the log
 */
public record BoilTrial(
        OptionalDouble measuredSeconds, double startCelsius, double warmestCelsius, LikelyResult expected) {}
