package simmerpoint.dish.cut;

import java.util.Arrays;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.Profile;

/** Radii of the borders between rings, from hub to rim, and the ring a radius lies in without a search. */
final class RingBorders {
    /** So many that most hold no border: a look further that is rarely needed costs nothing (measured: 4 a ring took 3 ns a ray more). */
    private static final int GUIDE_PER_RING = 32;

    /** Border radii, m. */
    final double[] radius;

    private final double[] share;
    private final int[] guide;

    RingBorders(int rings, RingSpacing spacing, DishPlan plan) {
        double hubRadius = plan.hubMetres() / 2;
        double rimRadius = plan.radiusMetres();
        radius = new double[rings + 1];
        for (int j = 0; j < radius.length; j++) {
            radius[j] = border((double) j / rings, spacing, hubRadius, rimRadius, plan.profile());
        }
        radius[0] = hubRadius;
        radius[rings] = rimRadius;
        share = new double[radius.length];
        for (int j = 0; j < share.length; j++) {
            share[j] = radius[j] * radius[j] / (rimRadius * rimRadius);
        }
        guide = new int[GUIDE_PER_RING * rings + 1];
        int j = 0;
        for (int g = 0; g < guide.length; g++) {
            while (j < rings - 1 && (double) g / (guide.length - 1) >= share[j + 1]) {
                j++;
            }
            guide[g] = j;
        }
    }

    private static double border(double share, RingSpacing spacing, double hub, double rim, Profile profile) {
        return switch (spacing) {
            case EQUAL_WIDTH -> hub + share * (rim - hub);
            case EQUAL_DEPTH_STEP ->
                profile.radiusAtHeight(profile.height(hub) + share * (profile.height(rim) - profile.height(hub)));
            case EQUAL_LENGTH ->
                profile.radiusAtArcLength(
                        profile.arcLength(hub) + share * (profile.arcLength(rim) - profile.arcLength(hub)));
        };
    }

    int rings() {
        return radius.length - 1;
    }

    /** Share of the outline within each border between hub and rim. */
    double[] shares() {
        return Arrays.stream(share, 0, rings()).filter(s -> s > 0).toArray();
    }

    /** The ring that contains the radius r = rim·√{@code v}, from hub to rim; constant time. */
    int ringAt(double v) {
        int j = guide[(int) (v * (guide.length - 1))];
        while (j < rings() - 1 && v >= share[j + 1]) {
            j++;
        }
        return j;
    }
}
