package simmerpoint.answer.words;

import simmerpoint.heat.GasBurner;

/**
 * What a cooking power means to someone who cooks on a gas hob: heat into the water against heat into the water, since the
 * efficiency of a ring is measured by the water it warms.
 *
 * <p>The rings are those of {@link GasBurner}. They differ by maker and country, so that the bands are widened by 5 % on
 * either side before a dish is said to be outside them. What a pan needs for a simmer is its own affair and not said here.
 */
public final class HobWords {
    private static final double SLACK = 0.05;
    private static final int STEP = 5;

    private HobWords() {}

    /** One sentence that compares {@code watts} into the water with a gas hob; empty if nothing goes into it. */
    public static String sentence(double watts) {
        if (!(watts > 0)) {
            return "";
        }
        String below = "";
        for (GasBurner ring : GasBurner.ALL) {
            if (watts < ring.lowWatts() * (1 - SLACK)) {
                return below.isEmpty()
                        ? "It is " + share(watts / ring.watts())
                                + " of what a small gas ring on full gives a lidded pot "
                                + "(about 570\u00a0to\u00a0600\u00a0W)."
                        : "It is between what a " + below + " and a " + ring.name()
                                + " gas ring on full give a lidded pot.";
            }
            if (watts <= ring.highWatts() * (1 + SLACK)) {
                return "It is about what a " + ring.name() + " gas ring on full gives a lidded pot.";
            }
            below = ring.name();
        }
        double times = watts / 1060;
        return times < 1.5
                ? "It is more than a large gas ring on full gives a lidded pot (about 1030\u00a0to\u00a01090\u00a0W)."
                : "It is about " + FigureFormat.rounded(times, 2)
                        + " times what a large gas ring on full gives a lidded pot: too strong for everyday cooking.";
    }

    private static String share(double share) {
        long percent = STEP * Math.round(100 * share / STEP);
        return percent < STEP ? "less than 5\u00a0%" : "about " + percent + "\u00a0%";
    }
}
