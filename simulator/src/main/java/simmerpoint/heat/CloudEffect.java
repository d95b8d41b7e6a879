package simmerpoint.heat;

import simmerpoint.uncertainty.LikelyRange;

/**
 * Effect of a cloud on a pan in steady state.
 *
 * @param beforeCelsius steady-state temperature before the cloud
 * @param dropKelvin drop of temperature during the cloud
 * @param recoverySeconds from the sun's return until it is within {@value #RECOVERED_KELVIN} K of that temperature
 */
public record CloudEffect(LikelyRange beforeCelsius, LikelyRange dropKelvin, LikelyRange recoverySeconds) {
    /** Difference at which a pan counts as recovered, K. */
    public static final double RECOVERED_KELVIN = 1;
}
