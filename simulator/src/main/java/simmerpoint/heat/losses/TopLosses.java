package simmerpoint.heat.losses;

/** Losses through the top of the pan: lid or open water. */
interface TopLosses {
    /**
     * Losses, W.
     *
     * @param waterKelvin temperature of the water
     * @param lightWatts absorbed by the lid, or by the water of an open pan
     */
    Losses at(double waterKelvin, double lightWatts);
}
