package simmerpoint.study.day;

import java.time.Duration;
import java.time.ZonedDateTime;

/**
 * A time in which the pan simmers or better.
 *
 * @param from its begin
 * @param to its end
 */
public record CookingInterval(ZonedDateTime from, ZonedDateTime to) {
    private static final double SECONDS_PER_HOUR = 3600;

    /** How long, h. */
    public double hours() {
        return Duration.between(from, to).toSeconds() / SECONDS_PER_HOUR;
    }
}
