package simmerpoint.uncertainty;

/** How likely the values of a quantity are that is not known exactly, as its inverse cumulative distribution. */
@FunctionalInterface
public interface Distribution {
    /**
     * The value that is not exceeded with that probability.
     *
     * @param probability above 0 and below 1
     */
    double quantile(double probability);

    /** The middle value: half of all are less. */
    default double median() {
        return quantile(0.5);
    }
}
