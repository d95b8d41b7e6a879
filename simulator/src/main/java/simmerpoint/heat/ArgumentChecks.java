package simmerpoint.heat;

/** Checks of arguments. NaN is refused. */
public final class ArgumentChecks {
    private ArgumentChecks() {}

    /** The value, if it lies from {@code least} to {@code most}. */
    public static double within(String name, double value, double least, double most, String unit) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    name + " " + value + " " + unit + " is outside " + least + " to " + most + " " + unit);
        }
        return value;
    }

    /** The value, if it is above 0 and finite. */
    public static double positive(String name, double value, String unit) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + " " + value + " " + unit + " is not above 0");
        }
        return value;
    }

    /** The value, if it is at least 0 and finite. */
    public static double notNegative(String name, double value, String unit) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + " " + value + " " + unit + " is not 0 or above");
        }
        return value;
    }
}
