package simmerpoint.trial.log;

import java.util.function.ToDoubleFunction;

/**
 * One row of a log.
 *
 * @param line of the file
 * @param seconds since the first row
 * @param waterCelsius the water's temperature; NaN where nothing is written
 * @param airCelsius the air's; NaN where nothing is written
 * @param irradiance all sunlight on a plane that faces the sun, W/m²; NaN where nothing is written
 * @param beam direct sunlight on that plane, W/m²; NaN where nothing is written
 * @param wind m/s; NaN where nothing is written
 */
public record Reading(
        int line, double seconds, double waterCelsius, double airCelsius, double irradiance, double beam, double wind) {
    /** Whether the water's temperature was read. */
    public boolean hasWater() {
        return !Double.isNaN(waterCelsius);
    }

    /** Whether a figure was read. */
    public boolean has(ToDoubleFunction<Reading> figure) {
        return !Double.isNaN(figure.applyAsDouble(this));
    }
}
