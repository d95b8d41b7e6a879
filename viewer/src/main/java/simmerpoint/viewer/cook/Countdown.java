package simmerpoint.viewer.cook;

import java.util.Optional;

/**
 * The time until the dish is to be aimed again, as a clock that runs down. Times are seconds on any clock that never goes back.
 *
 * @param total how long an aiming lasts, s
 * @param started when the dish was aimed; empty while the clock stands
 */
record Countdown(double total, Optional<Double> started) {
    private static final int MINUTE = 60;

    /** Standing, for an aiming that lasts so long. */
    static Countdown of(double minutes) {
        return new Countdown(Math.max(1, Math.rint(MINUTE * minutes)), Optional.empty());
    }

    /** Running from now on: the dish has just been aimed. */
    Countdown aimed(double now) {
        return new Countdown(total, Optional.of(now));
    }

    /** Standing again. */
    Countdown stopped() {
        return new Countdown(total, Optional.empty());
    }

    /** The same clock for an aiming that lasts so long. */
    Countdown lasting(double minutes) {
        return new Countdown(of(minutes).total, started);
    }

    boolean runs() {
        return started.isPresent();
    }

    /** Seconds left; below 0 where it is over. */
    double left(double now) {
        return total - started.map(start -> now - start).orElse(0.0);
    }

    boolean over(double now) {
        return runs() && left(now) <= 0;
    }

    /** Share that is left, 0 to 1. */
    double share(double now) {
        return Math.max(0, Math.min(1, left(now) / total));
    }

    /** For instance "4:05"; after the end "−0:12", and hours in "1:02:00". */
    String clock(double now) {
        double left = left(now);
        long seconds = (long) Math.abs(left >= 0 ? Math.ceil(left) : Math.floor(left));
        String text = seconds >= MINUTE * MINUTE
                ? String.format(
                        java.util.Locale.ROOT,
                        "%d:%02d:%02d",
                        seconds / (MINUTE * MINUTE),
                        seconds / MINUTE % MINUTE,
                        seconds % MINUTE)
                : String.format(java.util.Locale.ROOT, "%d:%02d", seconds / MINUTE, seconds % MINUTE);
        return left < 0 && seconds > 0 ? "\u2212" + text : text;
    }
}
