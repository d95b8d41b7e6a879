package simmerpoint.tracing;

/**
 * How the outgoing direction of each ray of a batch moves along one line of mirror errors. At signed radius ρ (in
 * standard deviations) the direction, of any length, is R(ρ) = R₀ + ρ·R₁ + ρ²·R₂, R₀ being the error-free ray of
 * {@link LightBatch}. Exact: with n + ρe for the mirror's normal, n ⊥ e, reflection of the sun's direction s gives
 * 2((n + ρe)·s)(n + ρe) − |n + ρe|²s (derived here from the law of reflection).
 */
public final class ErrorLine {
    /** R₁, x. */
    public final double[] x1;
    /** R₁, y. */
    public final double[] y1;
    /** R₁, z. */
    public final double[] z1;
    /** R₂, x. */
    public final double[] x2;
    /** R₂, y. */
    public final double[] y2;
    /** R₂, z. */
    public final double[] z2;

    ErrorLine(int n) {
        x1 = new double[n];
        y1 = new double[n];
        z1 = new double[n];
        x2 = new double[n];
        y2 = new double[n];
        z2 = new double[n];
    }
}
