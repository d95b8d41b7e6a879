package simmerpoint.units;

/** Refuses a figure that a programmer must not hand over. */
public final class RangeCheck {
    private RangeCheck() {}

    /**
     * Throws an {@link IllegalArgumentException} unless {@code good}. Write conditions so that NaN fails them.
     *
     * @param good whether the figure lies in its range
     * @param name of the figure
     * @param value of the figure
     * @param allowed the range in words, for instance "0 to 1"
     */
    public static void require(boolean good, String name, double value, String allowed) {
        if (!good) {
            throw new IllegalArgumentException(name + " " + value + " is outside " + allowed);
        }
    }

    /** Throws an {@link IllegalArgumentException} unless the figure is finite and 0 or more. */
    public static void zeroOrMore(double value, String name) {
        require(value >= 0 && Double.isFinite(value), name, value, "0 and more");
    }

    /** Throws an {@link IllegalArgumentException} unless the figure is finite and above 0. */
    public static void positive(double value, String name) {
        require(value > 0 && Double.isFinite(value), name, value, "what is above 0");
    }
}
