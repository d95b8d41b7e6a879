package simmerpoint.heat;

/**
 * What a cloud does to a pan that had settled.
 *
 * @param beforeCelsius where it had settled
 * @param dropKelvin how far it cools while the cloud lasts
 * @param recoverySeconds from the sun's return until it is within {@value #RECOVERED_KELVIN} K of where it was
 */
public record CloudEffect(LikelyRange beforeCelsius, LikelyRange dropKelvin, LikelyRange recoverySeconds) {
    /** So near to where it was a pan counts as recovered, K. */
    public static final double RECOVERED_KELVIN = 1;
}
