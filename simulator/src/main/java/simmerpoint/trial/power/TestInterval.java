package simmerpoint.trial.power;

import simmerpoint.heat.balance.StandardCookingPower;

/**
 * Ten minutes of a test.
 *
 * @param startSeconds since the first row of its log
 * @param interval what the standard makes of it; its irradiance is that which powers are standardised by
 * @param windMetresPerSecond mean wind; NaN where it was not measured
 * @param lightSpread greatest less least irradiance in it, W/m²; NaN where it was not measured
 * @param kelvinToBoiling local boiling less its warmest water
 */
public record TestInterval(
        double startSeconds,
        StandardCookingPower.Interval interval,
        double windMetresPerSecond,
        double lightSpread,
        double kelvinToBoiling) {
    private static final double LEAST_ABOVE_AIR = 5;

    /** Whether irradiance and water kept within what the standard allows for an interval (from memory). */
    public boolean isKept() {
        return isWarmEnough()
                && kelvinToBoiling >= LEAST_ABOVE_AIR
                && !(lightSpread > TestCondition.MOST_SPREAD)
                && (Double.isNaN(lightSpread) || TestCondition.IRRADIANCE.holds(interval.irradiance()));
    }

    private boolean isWarmEnough() {
        return interval.startCelsius() - interval.airCelsius() >= LEAST_ABOVE_AIR;
    }
}
