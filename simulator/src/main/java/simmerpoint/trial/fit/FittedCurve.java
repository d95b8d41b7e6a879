package simmerpoint.trial.fit;

import simmerpoint.trial.log.TrialLog;

/**
 * One log beside the model.
 *
 * @param log the readings
 * @param seconds of its points
 * @param measured the water there, °C
 * @param low of ten drawn cookers one is cooler, °C
 * @param likely the middle of the drawn cookers, °C
 * @param high of ten one is warmer, °C
 * @param fitted by all that is known now, °C
 */
public record FittedCurve(
        TrialLog log,
        double[] seconds,
        double[] measured,
        double[] low,
        double[] likely,
        double[] high,
        double[] fitted) {
    /** Root mean square of measured − fitted, K. */
    public double scatter() {
        double sum = 0;
        for (int k = 0; k < seconds.length; k++) {
            sum += (measured[k] - fitted[k]) * (measured[k] - fitted[k]);
        }
        return Math.sqrt(sum / seconds.length);
    }
}
