package simmerpoint.heat;

/** What a pan of water loses at a temperature. Has to rise with the temperature. */
public interface LossModel {
    /**
     * Losses with the water below boiling or just at it, without the steam that boiling itself makes.
     *
     * @param waterCelsius temperature of water and wetted pan
     * @param absorbed light on each face; heat that a hot dry wall or lid throws off again counts as loss
     */
    Losses at(double waterCelsius, AbsorbedLight absorbed);
}
