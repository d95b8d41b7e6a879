package simmerpoint.tracing;

/**
 * A batch of sunlight on its way off the mirrors, in the target frame, one array per component. The mirror's random
 * errors (slope error, beam spread, jitter) are one two-dimensional Gaussian per ray; it is kept as two lines through
 * its middle, square to each other, along each of which the error's signed radius follows
 * {@link simmerpoint.sampling.RadiusLaw}. Whoever catches the light can then integrate over the radius, or draw one with
 * {@link #draw}. Owned by one thread.
 */
public final class LightBatch {
    /** Number of rays in use. */
    public int size;
    /** Mirror point, m. */
    public final double[] px;
    /** Mirror point. */
    public final double[] py;
    /** Mirror point. */
    public final double[] pz;
    /** Direction to the place on the sun the ray came from, unit. */
    public final double[] sx;
    /** Direction to the sun. */
    public final double[] sy;
    /** Direction to the sun. */
    public final double[] sz;
    /** R₀, the outgoing direction without random error, unit. */
    public final double[] rx;
    /** R₀. */
    public final double[] ry;
    /** R₀. */
    public final double[] rz;
    /**
     * Watts of sunlight on the mirror point if this ray were the whole sample (divide by the number of rays); 0 where
     * another panel hides that point from the sun.
     */
    public final double[] watts;
    /** A uniform number for drawing an error. */
    public final double[] draw;
    /** Panel, or {@link simmerpoint.dish.MirrorPoints#GAP}. */
    public final int[] panel;
    /** First line of errors. */
    public final ErrorLine a;
    /** Second line of errors, square to the first. */
    public final ErrorLine b;

    LightBatch(int n) {
        size = n;
        px = new double[n];
        py = new double[n];
        pz = new double[n];
        sx = new double[n];
        sy = new double[n];
        sz = new double[n];
        rx = new double[n];
        ry = new double[n];
        rz = new double[n];
        watts = new double[n];
        draw = new double[n];
        panel = new int[n];
        a = new ErrorLine(n);
        b = new ErrorLine(n);
    }
}
