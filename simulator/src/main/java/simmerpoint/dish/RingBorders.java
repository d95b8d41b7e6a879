package simmerpoint.dish;

import java.util.Arrays;

/** Radii of the borders between rings, from hub to rim, and the ring a radius lies in without a search. */
final class RingBorders {
    private static final int GUIDE_PER_RING = 4;

    final double[] radius;
    private final int[] guide;
    private final double guideScale;

    RingBorders(Cut.FlatRings cut, double hubRadius, double rimRadius, Parabola parabola) {
        radius = new double[cut.rings() + 1];
        for (int j = 0; j < radius.length; j++) {
            radius[j] = border((double) j / cut.rings(), cut.spacing(), hubRadius, rimRadius, parabola);
        }
        radius[0] = hubRadius;
        radius[cut.rings()] = rimRadius;
        guide = new int[GUIDE_PER_RING * cut.rings() + 1];
        guideScale = (guide.length - 1) / (rimRadius - hubRadius);
        for (int g = 0; g < guide.length; g++) {
            int at = Arrays.binarySearch(radius, hubRadius + g / guideScale);
            guide[g] = Math.max(0, Math.min(cut.rings() - 1, at >= 0 ? at : -at - 2));
        }
    }

    private static double border(double share, RingSpacing spacing, double hub, double rim, Parabola parabola) {
        return switch (spacing) {
            case EQUAL_WIDTH -> hub + share * (rim - hub);
            case EQUAL_DEPTH_STEP -> Math.sqrt(hub * hub + share * (rim * rim - hub * hub));
            case EQUAL_LENGTH ->
                parabola.radiusAtArcLength(
                        parabola.arcLength(hub) + share * (parabola.arcLength(rim) - parabola.arcLength(hub)));
        };
    }

    int rings() {
        return radius.length - 1;
    }

    /** The ring with border[j] ≤ r < border[j + 1], for r from hub to rim: a table look-up and a step or two. */
    int ringAt(double r) {
        int j = guide[(int) Math.max(0, Math.min(guide.length - 1, (r - radius[0]) * guideScale))];
        while (j > 0 && r < radius[j]) {
            j--;
        }
        while (j < rings() - 1 && r >= radius[j + 1]) {
            j++;
        }
        return j;
    }
}
