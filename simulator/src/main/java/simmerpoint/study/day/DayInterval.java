package simmerpoint.study.day;

import java.time.Duration;
import java.time.ZonedDateTime;

/**
 * A stretch of a day, such as one in which the pan simmers or better.
 *
 * @param from its begin
 * @param to its end
 */
public record DayInterval(ZonedDateTime from, ZonedDateTime to) {
    private static final double SECONDS_PER_HOUR = 3600;

    /** How long, h. */
    public double hours() {
        return Duration.between(from, to).toSeconds() / SECONDS_PER_HOUR;
    }
}
