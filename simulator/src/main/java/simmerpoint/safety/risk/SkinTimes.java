package simmerpoint.safety.risk;

import java.util.OptionalDouble;

/**
 * Bare skin in strong heat radiation: time to pain and to a second-degree burn from EPA, FEMA, DOT: Handbook of Chemical Hazard
 * Analysis Procedures, 1989, table 4.2 (1 to 12 kW/m²), between its rows straight over logarithms; above 12 kW/m² the last row,
 * so that "within" is always true. A second law for the burn, t = 200 q^−1.46 s with q in kW/m² (DESR 6055.09), is about
 * half as long. The tables are for infrared: skin reflects more of sunlight, which is on the safe side.
 */
public final class SkinTimes {
    private static final double[] KILOWATTS = {1, 2, 3, 4, 5, 6, 8, 10, 12};
    private static final TimeCurve PAIN = new TimeCurve(KILOWATTS, new double[] {115, 45, 27, 18, 13, 11, 7, 5, 4});
    private static final TimeCurve BURN = new TimeCurve(KILOWATTS, new double[] {663, 187, 92, 57, 40, 30, 20, 14, 11});

    private SkinTimes() {}

    /** Seconds until it hurts; empty below 1 kW/m². */
    public static OptionalDouble pain(double wattsPerSquareMetre) {
        return PAIN.seconds(wattsPerSquareMetre / 1000);
    }

    /** Seconds until it is burnt by the table; empty below 1 kW/m². */
    public static OptionalDouble burn(double wattsPerSquareMetre) {
        return BURN.seconds(wattsPerSquareMetre / 1000);
    }

    /** Seconds until it is burnt by the shorter of both laws. */
    public static OptionalDouble soonestBurn(double wattsPerSquareMetre) {
        OptionalDouble table = burn(wattsPerSquareMetre);
        return table.isEmpty()
                ? table
                : OptionalDouble.of(Math.min(table.getAsDouble(), 200 * Math.pow(wattsPerSquareMetre / 1000, -1.46)));
    }
}
