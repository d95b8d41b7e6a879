package simmerpoint.heat;

import java.util.OptionalDouble;

/** How long a kettle takes from one temperature to another in unchanging light. */
final class WarmingTime {
    /** Beyond a day "never" is the honest word: the sun has set. */
    static final double LONGEST_SECONDS = 86_400;

    private static final double NEAR_KELVIN = 1e-9;

    private WarmingTime() {}

    /**
     * Time from {@code fromCelsius} to {@code toCelsius}, s, up or down; empty if it turns off before or takes longer than a
     * day. Neither may lie above local boiling.
     */
    static OptionalDouble seconds(PotModel kettle, AbsorbedLight absorbed, double fromCelsius, double toCelsius) {
        return seconds(HeatingIntegrator.exact(), kettle, absorbed, fromCelsius, toCelsius);
    }

    /** The same, good to some 2e-5 of itself: for the spread of many pans. */
    static OptionalDouble secondsForSpread(
            PotModel kettle, AbsorbedLight absorbed, double fromCelsius, double toCelsius) {
        return seconds(HeatingIntegrator.forSpread(), kettle, absorbed, fromCelsius, toCelsius);
    }

    private static OptionalDouble seconds(
            HeatingIntegrator integrator,
            PotModel kettle,
            AbsorbedLight absorbed,
            double fromCelsius,
            double toCelsius) {
        double way = toCelsius - fromCelsius;
        if (Math.abs(way) < NEAR_KELVIN) {
            return OptionalDouble.of(0);
        }
        if (!(kettle.surplusWatts(toCelsius, absorbed) * way > 0
                && kettle.surplusWatts(fromCelsius, absorbed) * way > 0)) {
            return OptionalDouble.empty();
        }
        double[] y = new double[HeatingEquations.SIZE];
        y[HeatingEquations.CELSIUS] = fromCelsius;
        y[HeatingEquations.WATER] = kettle.waterKilograms();
        StopCondition arrival = new StopCondition(HeatingEquations.CELSIUS, toCelsius);
        integrator.stopAt(arrival);
        integrator.stopAt(
                new StopCondition(HeatingEquations.WATER, HeatingIntegrator.DRY_SHARE * kettle.waterKilograms()));
        double seconds = integrator.run(new HeatingEquations(kettle, absorbed), 0, y, LONGEST_SECONDS);
        return arrival.reached() ? OptionalDouble.of(seconds) : OptionalDouble.empty();
    }
}
