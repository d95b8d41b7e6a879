package simmerpoint.heat;

/**
 * One point of a {@link TemperatureHistory}.
 *
 * @param seconds since the start
 * @param celsius temperature of the water
 * @param waterKilograms remaining water
 * @param absorbedWatts absorbed light
 * @param losses at that time, steam of boiling included
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
