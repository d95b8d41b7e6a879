package simmerpoint.trial;

import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.checks.CheckedScenario;
import simmerpoint.trial.log.Reading;
import simmerpoint.trial.log.Series;
import simmerpoint.trial.log.TrialLog;

/**
 * The scenario as it was during a log: settings of its comments, and water, air, wind and sunlight as measured, each with how well that is
 * known (±, two standard deviations; our estimates of what hand-held instruments do).
 */
final class LogScenario {
    /** Of a thermometer in the water and in the shade, K. */
    private static final String WATER_DOUBT = " °C ± 0.5 K";

    private static final String AIR_DOUBT = " °C ± 1 K";
    private static final double WIND_DOUBT = 0.3;
    private static final double BEAM_DOUBT = 0.05;

    /**
     * The beam's share of all light on a plane that faces the sun: 0.90 under the dry clear sky of ASTM G173-03 (900 of 1000 W/m²), less
     * in haze; 0.87 ± 0.08 here (our estimate).
     */
    static final double BEAM_SHARE = 0.87;

    private static final double SHARE_DOUBT = 0.08 / BEAM_SHARE;

    private LogScenario() {}

    /**
     * The scenario in the weather of a log.
     *
     * @param until end of what is looked at, s
     */
    static CheckedScenario of(CheckedScenario read, TrialLog log, double until) throws ScenarioException {
        Map<String, String> typed = new LinkedHashMap<>();
        List<Reading> water = log.water();
        typed.put(
                "pan.water-temperature",
                number(Math.max(0, Math.min(100, water.get(0).waterCelsius()))) + WATER_DOUBT);
        Series air = log.series(Reading::airCelsius);
        if (!air.isEmpty()) {
            typed.put("air.temperature", number(Math.max(-30, air.mean(0, until))) + AIR_DOUBT);
        }
        Series wind = log.series(Reading::wind);
        if (!wind.isEmpty()) {
            typed.put("air.wind", number(Math.min(20, wind.mean(0, until))) + " m/s ± " + WIND_DOUBT + " m/s");
        }
        sun(read, log, until, typed);
        typed.putAll(log.settings());
        try {
            return read.with(typed);
        } catch (ScenarioException e) {
            // What does not go together is the log's doing, so the log is named.
            return CheckedScenario.of(read.values()
                    .movedTo(log.file().toString(), read.values().folder())
                    .with(typed));
        }
    }

    private static void sun(CheckedScenario read, TrialLog log, double until, Map<String, String> typed) {
        boolean timed = read.values().hasSection("when");
        if (timed && log.begins().isPresent()) {
            LocalTime middle = log.begins().get().plusSeconds((long) (until / 2));
            typed.put("when.time", String.format(Locale.ROOT, "%02d:%02d", middle.getHour(), middle.getMinute()));
        }
        Series beam = log.series(Reading::beam);
        Series all = log.series(Reading::irradiance);
        if (!log.isCooling() && !(beam.isEmpty() && all.isEmpty())) {
            boolean own = !beam.isEmpty();
            double mean = own ? beam.mean(0, until) : BEAM_SHARE * all.mean(0, until);
            double doubt = own ? BEAM_DOUBT : Math.hypot(BEAM_DOUBT, SHARE_DOUBT);
            String key = read.values().has("sky.beam") ? "sky.beam" : "sun.beam";
            typed.put(key, number(Math.max(1, mean)) + " W/m² ± " + number(Math.max(0.1, doubt * mean)) + " W/m²");
        }
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
