package simmerpoint.heat.balance;

import simmerpoint.heat.AbsorbedLight;
import simmerpoint.sampling.RootFinder;

/** Steady state of a pot in constant light: boiling, or the temperature at which losses equal the absorbed light. */
final class SteadyState {
    /** Lower end of the search, below the steady state of any pan in the coldest air allowed. */
    private static final double COLDEST_CELSIUS = -42;

    private static final double SEARCH_KELVIN = 14;
    private static final int MOST_DOUBLINGS = 6;
    private static final RootFinder KELVIN = new RootFinder(0, 1e-9, 1e-15, 300);
    private static final RootFinder WATTS = RootFinder.toShare(1e-9, 300);

    private SteadyState() {}

    /** Whether it boils. */
    static boolean boils(PotModel pot, AbsorbedLight absorbed) {
        return pot.surplusWatts(pot.boilingCelsius(), absorbed) >= 0;
    }

    /** Steady-state temperature, °C, at most local boiling. */
    static double celsius(PotModel pot, AbsorbedLight absorbed) {
        double high = pot.boilingCelsius();
        if (boils(pot, absorbed)) {
            return high;
        }
        double low = 0;
        while (low > COLDEST_CELSIUS && pot.surplusWatts(low, absorbed) < 0) {
            high = low;
            low = Math.max(COLDEST_CELSIUS, low - SEARCH_KELVIN);
        }
        if (pot.surplusWatts(low, absorbed) <= 0) {
            return low;
        }
        return KELVIN.find(t -> pot.surplusWatts(t, absorbed), low, high);
    }

    /** Latent heat of the steam made by boiling, W; 0 if it does not boil. */
    static double boilingWatts(PotModel pot, AbsorbedLight absorbed) {
        return Math.max(0, pot.surplusWatts(pot.boilingCelsius(), absorbed));
    }

    /** Sum of the light with the given distribution for which the surplus at a temperature is {@code watts}, W. */
    static double wattsFor(PotModel pot, AbsorbedLight pattern, double celsius, double watts) {
        double none = pot.surplusWatts(celsius, AbsorbedLight.NOTHING);
        if (none >= watts) {
            return 0;
        }
        double high = 2 * (watts - none);
        for (int i = 0; pot.surplusWatts(celsius, pattern.scaledTo(high)) < watts; i++) {
            if (i == MOST_DOUBLINGS) {
                return Double.POSITIVE_INFINITY;
            }
            high *= 2;
        }
        return WATTS.find(w -> pot.surplusWatts(celsius, pattern.scaledTo(w)) - watts, 0, high);
    }
}
