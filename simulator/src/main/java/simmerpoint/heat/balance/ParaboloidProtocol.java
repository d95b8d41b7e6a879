package simmerpoint.heat.balance;

import java.util.List;
import simmerpoint.heat.ArgumentChecks;
import simmerpoint.uncertainty.StraightLine;

/**
 * Test procedure for paraboloid cookers: Mullick, Kandpal and Kumar 1991, Energy 16 (formulas from memory). A cooling curve
 * without sun gives the time constant and the loss factor, a heating curve the optical factor, both together the time to
 * boil. All for losses in proportion to water − air.
 *
 * @param heatCapacity of pan and water, J/K
 * @param panArea area that the loss factor is reckoned by, m²
 * @param apertureArea area that sunlight is reckoned by, m²
 * @param lossFactor W/(m² K) of pan area
 * @param opticalFactor share of the light through the aperture that gets into the pan
 */
public record ParaboloidProtocol(
        double heatCapacity, double panArea, double apertureArea, double lossFactor, double opticalFactor) {
    /** Checks what is divided by. */
    public ParaboloidProtocol {
        ArgumentChecks.positive("heat capacity", heatCapacity, "J/K");
        ArgumentChecks.positive("pan area", panArea, "m²");
        ArgumentChecks.positive("aperture area", apertureArea, "m²");
        ArgumentChecks.positive("loss factor", lossFactor, "W/(m² K)");
        ArgumentChecks.positive("optical factor", opticalFactor, "of 1");
    }

    /**
     * One reading of a cooling curve.
     *
     * @param seconds since the start
     * @param kelvinAboveAir water − air, above 0
     */
    public record Reading(double seconds, double kelvinAboveAir) {
        /** Checks the difference. */
        public Reading {
            ArgumentChecks.positive("water − air", kelvinAboveAir, "K");
        }
    }

    /** The straight line through ln(water − air) over the seconds of a cooling curve. */
    public static StraightLine coolingLine(List<Reading> cooling) {
        if (cooling.size() < 2) {
            throw notCooling();
        }
        StraightLine line = StraightLine.through(
                cooling.stream().mapToDouble(Reading::seconds).toArray(),
                cooling.stream().mapToDouble(r -> Math.log(r.kelvinAboveAir())).toArray());
        if (!(line.slope() < 0)) {
            throw notCooling();
        }
        return line;
    }

    private static IllegalArgumentException notCooling() {
        return new IllegalArgumentException("a cooling curve needs two readings, the later one cooler");
    }

    /** Time constant of a cooling curve, s. */
    public static double timeConstant(List<Reading> cooling) {
        return -1 / coolingLine(cooling).slope();
    }

    /** Loss factor from a time constant, W/(m² K): heat capacity ÷ (pan area · time constant). */
    public static double lossFactor(double heatCapacity, double panArea, double timeConstantSeconds) {
        return ArgumentChecks.positive("heat capacity", heatCapacity, "J/K")
                / (ArgumentChecks.positive("pan area", panArea, "m²")
                        * ArgumentChecks.positive("time constant", timeConstantSeconds, "s"));
    }

    /**
     * Optical factor from a heating curve.
     *
     * @param lossFactor W/(m² K)
     * @param panArea m²
     * @param apertureArea m²
     * @param timeConstantSeconds of the cooling curve
     * @param startAboveAir water − air at the start, K
     * @param endAboveAir water − air at the end, K
     * @param irradiance constant meanwhile, W/m²
     * @param seconds from start to end
     */
    public static double opticalFactor(
            double lossFactor,
            double panArea,
            double apertureArea,
            double timeConstantSeconds,
            double startAboveAir,
            double endAboveAir,
            double irradiance,
            double seconds) {
        ArgumentChecks.positive("irradiance", irradiance, "W/m²");
        ArgumentChecks.positive("heating time", seconds, "s");
        double decay = Math.exp(-seconds / timeConstantSeconds);
        double bracket = (endAboveAir - startAboveAir * decay) / irradiance;
        return lossFactor * panArea / apertureArea * bracket / -Math.expm1(-seconds / timeConstantSeconds);
    }

    /** Time constant of this pan, s. */
    public double timeConstantSeconds() {
        return heatCapacity / (panArea * lossFactor);
    }

    /**
     * Time from the air's temperature to boiling.
     *
     * @param kelvinToBoiling boiling − air, above 0; the source takes 100 °C for boiling
     * @param irradiance W/m², above 0
     * @return s; infinite if it never boils
     */
    public double secondsToBoil(double kelvinToBoiling, double irradiance) {
        ArgumentChecks.positive("boiling − air", kelvinToBoiling, "K");
        ArgumentChecks.positive("irradiance", irradiance, "W/m²");
        double share = lossFactor * panArea * kelvinToBoiling / (opticalFactor * apertureArea * irradiance);
        return share < 1 ? -timeConstantSeconds() * Math.log1p(-share) : Double.POSITIVE_INFINITY;
    }
}
