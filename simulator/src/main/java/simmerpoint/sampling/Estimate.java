package simmerpoint.sampling;

/**
 * A value with its standard error.
 *
 * @param value in the unit stated by the owner
 * @param standardError in the same unit, at least 0; 0 for a value known in closed form
 */
public record Estimate(double value, double standardError) {
    /** A value known without sampling. */
    public static Estimate exact(double value) {
        return new Estimate(value, 0);
    }

    /** This estimate times an exact constant. */
    public Estimate times(double factor) {
        return new Estimate(value * factor, standardError * Math.abs(factor));
    }

    /** Its size, without its sign. */
    public Estimate abs() {
        return new Estimate(Math.abs(value), standardError);
    }

    /** Standard error as a share of the value; infinite where the value is 0. */
    public double relativeError() {
        return standardError == 0 ? 0 : standardError / Math.abs(value);
    }
}
