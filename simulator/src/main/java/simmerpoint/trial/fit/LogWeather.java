package simmerpoint.trial.fit;

import simmerpoint.trial.log.Reading;
import simmerpoint.trial.log.Series;
import simmerpoint.trial.log.TrialLog;

/**
 * Light and air of a log relative to their means.
 *
 * @param sunless whether there is no light at all
 * @param light over time; constant where it was not measured
 * @param air over time
 * @param meanLight over the time that is looked at
 * @param meanAir over that time
 */
record LogWeather(boolean sunless, Series light, Series air, double meanLight, double meanAir) {
    static LogWeather of(TrialLog log, double until) {
        Series light = log.light().or(Series.constant(1));
        Series air = log.series(Reading::airCelsius).or(Series.constant(0));
        return new LogWeather(log.isCooling(), light, air, light.mean(0, until), air.mean(0, until));
    }

    double lightShare(double seconds) {
        return sunless ? 0 : light.at(seconds) / meanLight;
    }

    double warmerAir(double seconds) {
        return air.at(seconds) - meanAir;
    }
}
