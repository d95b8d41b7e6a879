package simmerpoint.trial.fit;

import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.trial.log.TrialLog;

/**
 * A log with the scenario as it was then.
 *
 * @param log the readings
 * @param scenario in the weather of the log
 * @param until what lies behind that is not looked at, s since the first row
 */
public record FittedLog(TrialLog log, CheckedScenario scenario, double until) {
    LogCurve curve() {
        return LogCurve.of(log.water(), until);
    }

    LogWeather weather() {
        return LogWeather.of(log, until);
    }
}
