package simmerpoint.viewer.pan;

/**
 * Where the curves lie on a drawing.
 *
 * @param low least pull-back, m
 * @param high largest
 * @param left edge, px
 * @param top edge, px
 * @param width px
 * @param height px
 */
record CurveFrame(double low, double high, double left, double top, double width, double height) {
    /** Room beside the curves for figures, px; the slider above leaves the same. */
    static final double SIDE = 72;

    private static final double HEAD = 20;
    private static final double FOOT = 36;
    private static final double NEAR = 9;

    /** For a drawing of that size. */
    static CurveFrame of(PullState pull, double width, double height) {
        return new CurveFrame(
                pull.lowMetres(),
                pull.highMetres(),
                SIDE,
                HEAD,
                Math.max(1, width - 2 * SIDE),
                Math.max(1, height - HEAD - FOOT));
    }

    double x(double pullBack) {
        return left + width * (pullBack - low) / (high - low);
    }

    /** The pull-back at a point, between the ends, m. */
    double pullBack(double x) {
        double share = Math.max(0, Math.min(1, (x - left) / width));
        return low + share * (high - low);
    }

    double y(double share) {
        return top + height * (1 - share);
    }

    /** Whether a point is on the mark of a place, or so near that it was meant. */
    boolean hits(double pullBack, double x, double y) {
        return Math.abs(x - x(pullBack)) <= NEAR && y >= 0 && y <= top + height + FOOT / 2;
    }

    /** Whether a point is among the curves. */
    boolean inside(double x, double y) {
        return x >= left && x <= left + width && y >= top && y <= top + height;
    }
}
