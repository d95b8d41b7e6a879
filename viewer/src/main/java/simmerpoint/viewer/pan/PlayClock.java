package simmerpoint.viewer.pan;

/** Where the pan is while it plays: back and forth between two places, slowing down at both, from where it stands. */
final class PlayClock {
    /** From one end to the other, s. */
    static final double SECONDS_ONE_WAY = 8;

    private final double middle;
    private final double half;
    private final double start;

    /** Between {@code low} and {@code high}, outwards from {@code from}. */
    PlayClock(double low, double high, double from) {
        middle = (low + high) / 2;
        half = (high - low) / 2;
        double share = half > 0 ? Math.max(-1, Math.min(1, (middle - from) / half)) : 0;
        start = Math.acos(share);
    }

    /** The place after so many seconds. */
    double at(double seconds) {
        return middle - half * Math.cos(start + Math.PI * seconds / SECONDS_ONE_WAY);
    }
}
