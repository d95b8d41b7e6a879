package simmerpoint.trial.log;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Times of day of a log: {@code 11:05}, {@code 11:05:30}, with {@code 2026-08-30} and a space or T before it or without. */
final class LogClock {
    private static final Pattern TIME =
            Pattern.compile("(?:(\\d{4}-\\d{2}-\\d{2})[ T])?(\\d{1,2}):(\\d{2})(?::(\\d{2})(?:\\.\\d+)?)?");

    private static final Pattern ELAPSED = Pattern.compile("(\\d{1,2}):([0-5]\\d):([0-5]\\d(?:\\.\\d+)?)");

    private LocalDateTime first;
    private boolean dated;

    /** Seconds since the first time; empty if the cell is no time, or has a date where the first had none, or none where it had. */
    Optional<Double> seconds(String cell) {
        Matcher m = TIME.matcher(cell);
        if (!m.matches()) {
            return Optional.empty();
        }
        try {
            LocalDate date = m.group(1) == null ? LocalDate.EPOCH : LocalDate.parse(m.group(1));
            int second = m.group(4) == null ? 0 : Integer.parseInt(m.group(4));
            LocalDateTime time = LocalDateTime.of(
                    date, LocalTime.of(Integer.parseInt(m.group(2)), Integer.parseInt(m.group(3)), second));
            if (first == null) {
                first = time;
                dated = m.group(1) != null;
            }
            return dated == (m.group(1) != null)
                    ? Optional.of((double) Duration.between(first, time).toSeconds())
                    : Optional.empty();
        } catch (java.time.DateTimeException e) {
            return Optional.empty();
        }
    }

    /** Seconds of a time since any beginning that is written {@code 0:05:30}; empty if it is not. */
    static OptionalDouble elapsed(String cell) {
        Matcher m = ELAPSED.matcher(cell);
        return m.matches()
                ? OptionalDouble.of(3600 * Double.parseDouble(m.group(1))
                        + 60 * Double.parseDouble(m.group(2))
                        + Double.parseDouble(m.group(3)))
                : OptionalDouble.empty();
    }

    /** Time of day of the first row, where there was one. */
    Optional<LocalTime> begins() {
        return Optional.ofNullable(first).map(LocalDateTime::toLocalTime);
    }

    boolean isDated() {
        return dated;
    }
}
