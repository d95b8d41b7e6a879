package simmerpoint.heat.balance;

import java.util.Arrays;
import java.util.List;
import simmerpoint.heat.ArgumentChecks;
import simmerpoint.heat.PhysicalConstants;
import simmerpoint.uncertainty.StraightLine;

/**
 * Standardised cooking power of a solar cooker from a test with water: ASAE S580 (draft of 2001 and its clauses 7.2 to
 * 7.7 seen; current edition ASABE S580.1, November 2013). Over intervals of ten minutes P = (T₂ − T₁)·M·c/600 with c = 4186
 * J/(kg K); standardised to 700 W/m²: P·700/I; a straight line through it against water − air. The single figure is the
 * line at 50 K: Funk 2000, Solar Energy 68, 1.
 *
 * <p>Conditions of the test, from memory: 7 kg of water per m² of aperture, wind below 1 m/s, air 20 to 35 °C, 450 to 1100
 * W/m², 30 intervals on three days, coefficient of determination above 0.75.
 */
public final class StandardCookingPower {
    /** Irradiance that powers are standardised to, W/m². */
    public static final double STANDARD_IRRADIANCE = 700;

    /** Water − air of the single figure, K. */
    public static final double STANDARD_DIFFERENCE = 50;

    /** Water per aperture, kg/m². */
    public static final double LOAD = 7;

    private StandardCookingPower() {}

    /**
     * One interval.
     *
     * @param seconds its length; 600 in the standard
     * @param waterKilograms the load
     * @param startCelsius water at its start
     * @param endCelsius water at its end
     * @param meanWaterCelsius mean water temperature over it; the mean of the two ends makes the slope low by (interval ÷
     *     time constant)²/12 (derived here)
     * @param airCelsius mean air temperature
     * @param irradiance mean irradiance, W/m²
     */
    public record Interval(
            double seconds,
            double waterKilograms,
            double startCelsius,
            double endCelsius,
            double meanWaterCelsius,
            double airCelsius,
            double irradiance) {
        /** Checks what is divided by. */
        public Interval {
            ArgumentChecks.positive("interval", seconds, "s");
            ArgumentChecks.positive("water", waterKilograms, "kg");
            ArgumentChecks.positive("irradiance", irradiance, "W/m²");
        }

        /** Heat into the water, W. */
        public double watts() {
            return (endCelsius - startCelsius) * waterKilograms * PhysicalConstants.WATER_SPECIFIC_HEAT / seconds;
        }

        /** Standardised heat into the water, W. */
        public double standardisedWatts() {
            return watts() * STANDARD_IRRADIANCE / irradiance;
        }

        /** Mean water − air, K. */
        public double difference() {
            return meanWaterCelsius - airCelsius;
        }
    }

    /**
     * The regression line.
     *
     * @param fit standardised power, W, against water − air, K
     */
    public record Line(StraightLine fit) {
        /** Standardised power at air temperature, W. */
        public double interceptWatts() {
            return fit.intercept();
        }

        /** Its slope, W/K, usually below 0. */
        public double wattsPerKelvin() {
            return fit.slope();
        }

        /** Coefficient of determination, 0 to 1. */
        public double determination() {
            return fit.determination();
        }

        /** The single figure: standardised power at 50 K, W. */
        public double standardPowerWatts() {
            return fit.at(STANDARD_DIFFERENCE);
        }

        /** How far the single figure may be off to both sides, W; {@code confidence} of such intervals hold the truth. */
        public double halfWidthWatts(double confidence) {
            return fit.reach(confidence) * fit.errorAt(STANDARD_DIFFERENCE);
        }
    }

    /** The regression line through at least three intervals of different water − air. */
    public static Line line(List<Interval> intervals) {
        double[] differences =
                intervals.stream().mapToDouble(Interval::difference).toArray();
        boolean differ = Arrays.stream(differences).distinct().count() > 1;
        if (!(differences.length >= 3 && differ)) {
            throw new IllegalArgumentException("a line needs three intervals of different water temperature");
        }
        return new Line(StraightLine.through(
                differences,
                intervals.stream().mapToDouble(Interval::standardisedWatts).toArray()));
    }
}
