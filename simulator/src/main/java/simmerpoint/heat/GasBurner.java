package simmerpoint.heat;

import java.util.List;
import simmerpoint.uncertainty.LikelyRange;

/**
 * A household gas burner on full, by its heat input to the water of a lidded pan: efficiencies of burners are measured by the
 * water they warm (common practice), so they are net of what pot and air take.
 *
 * @param name its size: small, medium, large
 * @param lowWatts lower end of the heat input, W
 * @param highWatts upper end, W
 */
public record GasBurner(String name, double lowWatts, double highWatts) {
    /**
     * Small, medium and large: ratings of 1000, 1400 and 1800 kcal/h (1.16, 1.63, 2.09 kW) and 49 to 52 % into a lidded pan,
     * both of the Argentine gas regulator ENARGAS 2020 and Sensini et al. 2018, as quoted by others; their product derived here.
     */
    public static final List<GasBurner> ALL = List.of(
            new GasBurner("small", 570, 600), new GasBurner("medium", 800, 850), new GasBurner("large", 1030, 1090));

    /**
     * Heat input of a low flame that keeps a lidded pan of 1 to 5 litres at a simmer, W: losses of 1.3 to 3 W/K times 80 K
     * (derived here, not measured).
     */
    public static final LikelyRange LOW_FLAME = new LikelyRange(100, 160, 250);

    /** Checks the order. */
    public GasBurner {
        ArgumentChecks.positive("watts into the pan", lowWatts, "W");
        ArgumentChecks.within("watts into the pan", highWatts, lowWatts, 10_000, "W");
    }

    /** Middle of the two ends, W. */
    public double watts() {
        return (lowWatts + highWatts) / 2;
    }
}
