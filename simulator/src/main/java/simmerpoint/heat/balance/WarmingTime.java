package simmerpoint.heat.balance;

import java.util.OptionalDouble;
import simmerpoint.heat.AbsorbedLight;

/** Time of a pot from one temperature to another in constant light. */
final class WarmingTime {
    /** Longer times count as never, s: a day. */
    static final double LONGEST_SECONDS = 86_400;

    private static final double NEAR_KELVIN = 1e-9;

    private WarmingTime() {}

    /**
     * Time from {@code fromCelsius} to {@code toCelsius}, s, heating or cooling; empty if it does not get there within a
     * day. Neither may be above local boiling.
     */
    static OptionalDouble seconds(PotModel pot, AbsorbedLight absorbed, double fromCelsius, double toCelsius) {
        double change = toCelsius - fromCelsius;
        if (Math.abs(change) < NEAR_KELVIN) {
            return OptionalDouble.of(0);
        }
        if (!(pot.surplusWatts(toCelsius, absorbed) * change > 0
                && pot.surplusWatts(fromCelsius, absorbed) * change > 0)) {
            return OptionalDouble.empty();
        }
        double[] y = new double[HeatingEquations.SIZE];
        y[HeatingEquations.CELSIUS] = fromCelsius;
        y[HeatingEquations.WATER] = pot.waterKilograms();
        HeatingIntegrator integrator = new HeatingIntegrator();
        StopCondition arrival = new StopCondition(HeatingEquations.CELSIUS, toCelsius);
        integrator.stopAt(arrival);
        integrator.stopAt(
                new StopCondition(HeatingEquations.WATER, HeatingIntegrator.DRY_SHARE * pot.waterKilograms()));
        double seconds = integrator.run(new HeatingEquations(pot, absorbed), 0, y, LONGEST_SECONDS);
        return arrival.reached() ? OptionalDouble.of(seconds) : OptionalDouble.empty();
    }
}
