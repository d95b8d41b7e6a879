package simmerpoint.heat;

import java.util.List;
import java.util.Locale;

/**
 * Watts into the pan in a cook's words. The rings are those of {@link GasBurner}; the low flame, 100 to 250 W, is what keeps
 * a lidded pan of 1 to 5 litres at a simmer: losses of 1.3 to 3 W/K times 80 K (derived here, not measured).
 */
public final class BurnerComparison {
    /** What a low flame puts into a pan, W. */
    public static final LikelyRange LOW_FLAME = new LikelyRange(100, 160, 250);

    private static final double LIKE_RING = 0.1;
    private static final double MUCH_MORE = 1.5;

    private BurnerComparison() {}

    /**
     * For instance "about a small gas ring on full".
     *
     * @param wattsIntoPan net or absorbed watts, at least 0
     */
    public static String compare(double wattsIntoPan) {
        ArgumentChecks.notNegative("watts into the pan", wattsIntoPan, "W");
        GasBurner small = GasBurner.ALL.get(0);
        if (wattsIntoPan < small.lowWatts() * (1 - LIKE_RING)) {
            return belowSmall(wattsIntoPan, small);
        }
        GasBurner large = GasBurner.ALL.get(GasBurner.ALL.size() - 1);
        if (wattsIntoPan > large.highWatts() * (1 + LIKE_RING)) {
            return beyondLarge(wattsIntoPan, large);
        }
        return amongRings(wattsIntoPan, GasBurner.ALL);
    }

    private static String belowSmall(double watts, GasBurner small) {
        if (watts < LOW_FLAME.low() / 2) {
            return "far less than the lowest flame of a gas ring";
        }
        if (watts < LOW_FLAME.low()) {
            return "less than a low flame that keeps a lidded pan at a simmer";
        }
        if (watts <= LOW_FLAME.high()) {
            return "about a low flame that keeps a lidded pan at a simmer";
        }
        if (watts < 0.6 * small.watts()) {
            return "about half of " + small.name() + " on full";
        }
        return watts < 0.68 * small.watts()
                ? "about two thirds of " + small.name() + " on full"
                : "a little below " + small.name() + " on full";
    }

    private static String beyondLarge(double watts, GasBurner large) {
        double times = watts / large.watts();
        return times < MUCH_MORE
                ? "more than " + large.name() + " on full"
                : String.format(Locale.ROOT, "about %.1f times %s on full", times, large.name());
    }

    private static String amongRings(double watts, List<GasBurner> rings) {
        GasBurner below = rings.get(0);
        for (GasBurner ring : rings) {
            if (watts < ring.lowWatts() * (1 - LIKE_RING / 2)) {
                return watts <= below.highWatts() * (1 + LIKE_RING)
                        ? "about " + below.name() + " on full"
                        : "between " + below.name() + " and " + ring.name() + " on full";
            }
            below = ring;
        }
        return "about " + below.name() + " on full";
    }
}
