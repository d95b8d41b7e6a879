package simmerpoint.sampling;

/**
 * A figure and how sure it is.
 *
 * @param value the figure, in the unit its owner states
 * @param standardError one standard error in the same unit, at least 0; 0 for a figure known in closed form
 */
public record Estimate(double value, double standardError) {
    /** A figure known without sampling. */
    public static Estimate exact(double value) {
        return new Estimate(value, 0);
    }

    /** This figure times a constant that is known exactly. */
    public Estimate times(double factor) {
        return new Estimate(value * factor, standardError * Math.abs(factor));
    }

    /** Standard error as a share of the value; infinite where the value is 0. */
    public double relativeError() {
        return standardError == 0 ? 0 : standardError / Math.abs(value);
    }
}
