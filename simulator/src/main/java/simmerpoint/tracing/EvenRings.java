package simmerpoint.tracing;

import java.util.Arrays;

/**
 * Spreads numbers so that every ring of a dish gets a whole number of {@value #PARTS} equal parts of them, as near to its area as whole
 * numbers are: each replicate then has as many places on each ring as any other, and no more on one for its luck. What a place stands for
 * is scaled in return, so all is right on average (derived here: a change of variables). Immutable.
 */
final class EvenRings {
    private static final int PARTS = 128;

    /** With more rings than this, parts would be too few to follow their areas. */
    private static final int MOST_RINGS = 16;

    private final double[] start = new double[PARTS];
    private final double[] width = new double[PARTS];
    private final boolean none;

    /** For rings that end at these numbers, ascending between 0 and 1; the last one ends at 1. */
    EvenRings(double[] borders) {
        none = borders.length == 0 || borders.length > MOST_RINGS;
        int part = 0;
        double from = 0;
        for (int ring = 0; !none && ring <= borders.length; ring++) {
            int left = borders.length - ring;
            double to = left == 0 ? 1 : borders[ring];
            int end = Math.max(part + 1, Math.min(PARTS - left, (int) Math.round(PARTS * to)));
            Arrays.fill(width, part, end, (to - from) / (end - part));
            for (int k = part; k < end; k++) {
                start[k] = from + (k - part) * width[k];
            }
            part = end;
            from = to;
        }
    }

    /** Whether numbers stay as they are. */
    boolean none() {
        return none;
    }

    /**
     * Replaces {@code n} numbers.
     *
     * @param numbers from 0 to 1
     * @param scale receives how much more than before each stands for
     */
    void spread(double[] numbers, int n, float[] scale) {
        for (int i = 0; i < n; i++) {
            double at = numbers[i] * PARTS;
            int part = (int) at;
            numbers[i] = start[part] + (at - part) * width[part];
            scale[i] = (float) (PARTS * width[part]);
        }
    }
}
