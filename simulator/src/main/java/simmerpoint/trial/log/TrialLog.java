package simmerpoint.trial.log;

import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * What one log says.
 *
 * @param file it was read from
 * @param settings keys of the scenario that held during it, as typed: comments such as {@code # stand.pull-back: 8 cm}
 * @param sunless whether a comment says so: {@code # sun: none}
 * @param begins time of day of the first row, where the log has that
 * @param readings in order of time, at least two with the water's temperature; the first at 0 s
 */
public record TrialLog(
        Path file, Map<String, String> settings, boolean sunless, Optional<LocalTime> begins, List<Reading> readings) {
    /** So little light is none: a pyranometer in the shade, or the mirror covered, W/m². */
    public static final double DARK = 20;

    /** A thermometer in boiling water may show so much less, K. */
    private static final double NEARLY_BOILING = 1;

    /** Of so many kelvin a fall is no noise of a thermometer. */
    private static final double FALL = 1;

    /** Keeps its own. */
    public TrialLog {
        settings = Map.copyOf(settings);
        readings = List.copyOf(readings);
    }

    /** The readings of the water. */
    public List<Reading> water() {
        return readings.stream().filter(Reading::hasWater).toList();
    }

    /** Whether a column has anything in it. */
    public boolean has(ToDoubleFunction<Reading> figure) {
        return readings.stream().anyMatch(r -> r.has(figure));
    }

    /** A figure over time. */
    public Series series(ToDoubleFunction<Reading> figure) {
        return Series.of(readings, figure);
    }

    /** From the first row to the last, s. */
    public double seconds() {
        return readings.get(readings.size() - 1).seconds();
    }

    /** Whether light was measured. */
    public boolean hasLight() {
        return has(Reading::irradiance) || has(Reading::beam);
    }

    /** All light where that was measured, else the beam; empty where neither was. */
    public Series light() {
        return series(Reading::irradiance).or(series(Reading::beam));
    }

    /**
     * Whether it is one of cooling without sun: a comment says so, the light says so, or no light was measured and the water falls from
     * first to last.
     */
    public boolean isCooling() {
        if (sunless) {
            return true;
        }
        return hasLight() ? readings.stream().allMatch(TrialLog::isDark) : onlyFalls();
    }

    private static boolean isDark(Reading r) {
        return !(r.irradiance() > DARK) && !(r.beam() > DARK);
    }

    private boolean onlyFalls() {
        List<Reading> water = water();
        double first = water.get(0).waterCelsius();
        double last = water.get(water.size() - 1).waterCelsius();
        double most = water.stream().mapToDouble(Reading::waterCelsius).max().orElse(first);
        return last < first - FALL && most < first + FALL;
    }

    /**
     * Until when the log tells how the pan warms, s: until it nearly boils, and without measured light at the latest until it is hottest.
     */
    public double warmsUntil(double boilingCelsius) {
        double hottest = 0;
        double most = Double.NEGATIVE_INFINITY;
        for (Reading reading : water()) {
            if (reading.waterCelsius() >= boilingCelsius - NEARLY_BOILING) {
                return reading.seconds();
            }
            if (reading.waterCelsius() > most) {
                most = reading.waterCelsius();
                hottest = reading.seconds();
            }
        }
        return hasLight() ? seconds() : hottest;
    }

    /** When the water first came within a kelvin of boiling, s since the first row; empty if it did not, or stood there from the first. */
    public OptionalDouble boils(double boilingCelsius) {
        List<Reading> water = water();
        return water.get(0).waterCelsius() >= boilingCelsius - NEARLY_BOILING
                ? OptionalDouble.empty()
                : water.stream()
                        .filter(r -> r.waterCelsius() >= boilingCelsius - NEARLY_BOILING)
                        .mapToDouble(Reading::seconds)
                        .findFirst();
    }
}
