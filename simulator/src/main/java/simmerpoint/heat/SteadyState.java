package simmerpoint.heat;

import org.apache.commons.math3.analysis.solvers.BrentSolver;

/** Where a kettle ends up in unchanging light: at boiling, or at the temperature where losses equal light. */
final class SteadyState {
    /** Where the search for a settling temperature gives up: no pan of water settles so far below any air allowed. */
    private static final double COLDEST_CELSIUS = -42;

    private static final double SEARCH_KELVIN = 14;
    private static final double ACCURACY_WATTS = 1e-9;
    private static final int MOST_DOUBLINGS = 6;
    private static final double ACCURACY_KELVIN = 1e-9;
    private static final int MOST_STEPS = 300;

    private SteadyState() {}

    /** Whether it can hold boiling. */
    static boolean boils(PotModel kettle, AbsorbedLight absorbed) {
        return kettle.surplusWatts(kettle.boilingCelsius(), absorbed) >= 0;
    }

    /** The temperature it settles at, °C, at most local boiling. */
    static double celsius(PotModel kettle, AbsorbedLight absorbed) {
        double high = kettle.boilingCelsius();
        if (boils(kettle, absorbed)) {
            return high;
        }
        double low = 0;
        while (low > COLDEST_CELSIUS && kettle.surplusWatts(low, absorbed) < 0) {
            high = low;
            low = Math.max(COLDEST_CELSIUS, low - SEARCH_KELVIN);
        }
        if (kettle.surplusWatts(low, absorbed) <= 0) {
            return low;
        }
        return new BrentSolver(0, ACCURACY_KELVIN).solve(MOST_STEPS, t -> kettle.surplusWatts(t, absorbed), low, high);
    }

    /** Steam that boiling itself makes, W; 0 if it does not boil. */
    static double boilingWatts(PotModel kettle, AbsorbedLight absorbed) {
        return Math.max(0, kettle.surplusWatts(kettle.boilingCelsius(), absorbed));
    }

    /** Light of this kind, however strong, at which the surplus at a temperature is {@code watts}: its sum, W. */
    static double wattsFor(PotModel kettle, AbsorbedLight pattern, double celsius, double watts) {
        double none = kettle.surplusWatts(celsius, AbsorbedLight.NOTHING);
        if (none >= watts) {
            return 0;
        }
        double high = 2 * (watts - none);
        for (int i = 0; kettle.surplusWatts(celsius, pattern.scaledTo(high)) < watts; i++) {
            if (i == MOST_DOUBLINGS) {
                return Double.POSITIVE_INFINITY;
            }
            high *= 2;
        }
        return new BrentSolver(ACCURACY_WATTS, ACCURACY_WATTS)
                .solve(MOST_STEPS, w -> kettle.surplusWatts(celsius, pattern.scaledTo(w)) - watts, 0, high);
    }
}
