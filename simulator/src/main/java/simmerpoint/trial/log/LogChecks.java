package simmerpoint.trial.log;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import simmerpoint.trial.log.LogColumn.Quantity;

/** Finds columns that are in another unit than their name says. */
final class LogChecks {
    /** The sun shines no longer than this on a dish of these latitudes, s. */
    private static final double LONGEST_SUN = 16 * 3600;

    /** Sunlight in kW/m² is less than this; in W/m² so little is none. */
    private static final double MOST_KILOWATTS = 1.5;

    /** Water that warms by so much had some sun, K. */
    private static final double WARMED = 5;

    private LogChecks() {}

    /** What is wrong with a log, a sentence; empty if nothing is. */
    static Optional<String> trouble(TrialLog log, List<LogColumn> columns) {
        return kilowatts(log, columns).or(() -> tooLong(log, columns));
    }

    private static Optional<String> kilowatts(TrialLog log, List<LogColumn> columns) {
        return columns.stream()
                .filter(column -> !log.sunless())
                .map(column -> kilowatts(log, column))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<String> kilowatts(TrialLog log, LogColumn column) {
        boolean light = column.quantity() == Quantity.BEAM || column.quantity() == Quantity.IRRADIANCE;
        double most = most(log, column.quantity() == Quantity.BEAM ? Reading::beam : Reading::irradiance);
        double warmed = most(log, Reading::waterCelsius) - log.water().get(0).waterCelsius();
        return light && most > 0 && most < MOST_KILOWATTS && warmed > WARMED
                ? Optional.of(String.format(
                        Locale.ROOT,
                        "%s is never more than %.2f, which is no sun, and yet the water warms by %.0f K. Is the column in"
                                + " kW/m²? Then multiply it by 1000.",
                        column.head(),
                        most,
                        warmed))
                : Optional.empty();
    }

    private static double most(TrialLog log, ToDoubleFunction<Reading> figure) {
        return log.readings().stream()
                .filter(r -> r.has(figure))
                .mapToDouble(figure)
                .max()
                .orElse(0);
    }

    /** Longer than a day's sun without a dark reading: the times are not what the name of their column says. */
    private static Optional<String> tooLong(TrialLog log, List<LogColumn> columns) {
        boolean night = log.isCooling()
                || log.readings().stream().anyMatch(r -> r.beam() <= TrialLog.DARK || r.irradiance() <= TrialLog.DARK);
        String unit = otherUnit(columns);
        return night || unit.isEmpty() || log.seconds() <= LONGEST_SUN
                ? Optional.empty()
                : Optional.of(String.format(
                        Locale.ROOT,
                        "the log lasts %.0f hours, longer than a day\u2019s sun, and never gets dark.%s",
                        log.seconds() / 3600,
                        unit));
    }

    /** The unit that times may be in if they are too long: " Are the times in seconds?"; empty where the unit cannot be wrong. */
    static String otherUnit(List<LogColumn> columns) {
        if (columns.contains(LogColumn.TIME_MIN)) {
            return " Are the times in seconds? Then call the column time_s.";
        }
        return columns.contains(LogColumn.TIME_H) ? " Are the times in minutes? Then call the column time_min." : "";
    }
}
