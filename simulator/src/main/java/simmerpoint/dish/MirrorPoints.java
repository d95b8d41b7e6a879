package simmerpoint.dish;

/**
 * A batch of points on the mirrors, one array per component so that loops are vectorised. In the dish frame. The arrays
 * are reused and belong to one thread.
 */
public final class MirrorPoints {
    /** {@link #panel} of a place in the hub or in a gap; any number below 0 is one. */
    public static final int GAP = -1;

    /** {@link #panel} of a place on a mirror that a mask covers; below every ~k. */
    public static final int COVERED = Integer.MIN_VALUE;

    /** Place, m. */
    public final double[] x;
    /** Place, m. */
    public final double[] y;
    /** Place, m. */
    public final double[] z;
    /** Unit normal of the surface towards the light, without any error. */
    public final double[] nx;
    /** Unit normal. */
    public final double[] ny;
    /** Unit normal. */
    public final double[] nz;
    /**
     * Surface area that the place stands for, m², if one batch were the whole sample: divide by the sample's size. 0 outside the
     * outline: what alters a surface may scale it and must not set it anew.
     */
    public final double[] area;
    /** Number of the panel k; in the hub or in a gap ~k, below 0, if panel k would cover the place, else {@link #GAP}; under a mask {@link #COVERED}. */
    public final int[] panel;

    /** The zone of all places, see {@link PanelZones}; below 0 if they are of several. */
    public int zone;

    /** Copies place {@code from} to place {@code to} of another batch. */
    public void copy(int from, MirrorPoints other, int to) {
        other.x[to] = x[from];
        other.y[to] = y[from];
        other.z[to] = z[from];
        other.nx[to] = nx[from];
        other.ny[to] = ny[from];
        other.nz[to] = nz[from];
        other.area[to] = area[from];
        other.panel[to] = panel[from];
    }

    /** Room for {@code n} places. */
    public MirrorPoints(int n) {
        x = new double[n];
        y = new double[n];
        z = new double[n];
        nx = new double[n];
        ny = new double[n];
        nz = new double[n];
        area = new double[n];
        panel = new int[n];
    }
}
