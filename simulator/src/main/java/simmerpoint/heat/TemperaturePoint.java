package simmerpoint.heat;

/**
 * One instant of a {@link TemperatureHistory}.
 *
 * @param seconds since the start
 * @param celsius temperature of the water
 * @param waterKilograms what is left of it
 * @param absorbedWatts light taken up
 * @param losses what leaves at that instant, boiling's steam included
 * @param since energies since the start
 */
public record TemperaturePoint(
        double seconds,
        double celsius,
        double waterKilograms,
        double absorbedWatts,
        Losses losses,
        EnergyBalance since) {
    /** What warms pan and water, W; below 0 if they cool. */
    public double storedWatts() {
        return absorbedWatts - losses.total();
    }
}
