package simmerpoint.heat;

/** What closes the pan above. */
interface TopLosses {
    /**
     * What leaves through it.
     *
     * @param waterKelvin temperature of the water
     * @param lightWatts taken up by the lid, or by what is under an open top
     */
    Losses at(double waterKelvin, double lightWatts);
}
