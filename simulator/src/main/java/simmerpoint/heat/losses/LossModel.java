package simmerpoint.heat.losses;

import simmerpoint.heat.AbsorbedLight;

/** Losses of a pan of water by temperature; must rise with the temperature. */
public interface LossModel {
    /**
     * Losses up to boiling, without the steam made by boiling itself.
     *
     * @param waterCelsius temperature of water and wetted pan
     * @param absorbed light on each face; heat that a hot dry wall or lid gives off counts as loss
     */
    Losses at(double waterCelsius, AbsorbedLight absorbed);
}
