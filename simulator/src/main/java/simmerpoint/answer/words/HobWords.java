package simmerpoint.answer.words;

import simmerpoint.heat.GasBurner;

/**
 * What watts going into a pan mean to someone who cooks on a gas hob.
 *
 * <p>The rings and the low flame are those of {@link GasBurner}. Rings differ by maker and country, so that the bands are
 * widened by 5 % on either side before a dish is said to be outside them.
 */
public final class HobWords {
    private static final double SLACK = 0.05;

    private HobWords() {}

    /** One sentence that compares {@code watts} taken up by a pan with a gas hob. */
    public static String sentence(double watts) {
        String simmer =
                "the 100\u00a0to\u00a0250\u00a0W that keep a lidded pot of 1\u00a0to\u00a05\u00a0litres simmering";
        if (!(watts >= 30)) {
            return "That warms a pan slightly and does not cook: " + simmer + " are far off.";
        }
        if (watts < 100) {
            return "That is less than " + simmer + ": enough to keep food warm at best.";
        }
        if (watts <= 250) {
            return "That is about " + simmer
                    + ", and far below a small gas ring, which gives a pot about 570\u00a0to\u00a0600\u00a0W.";
        }
        return ring(watts);
    }

    private static String ring(double watts) {
        String below = "";
        for (GasBurner ring : GasBurner.ALL) {
            if (watts < ring.lowWatts() * (1 - SLACK)) {
                return below.isEmpty()
                        ? "That is less than a small gas ring gives a pot (about 570\u00a0to\u00a0600\u00a0W) and more than a "
                                + "lidded pot of 1\u00a0to\u00a05\u00a0litres needs to simmer (100\u00a0to\u00a0250\u00a0W)."
                        : "That is between what a " + below + " and a " + ring.name() + " gas ring give a pot.";
            }
            if (watts <= ring.highWatts() * (1 + SLACK)) {
                return "That is about what a " + ring.name() + " gas ring gives a pot.";
            }
            below = ring.name();
        }
        double times = watts / 1060;
        return times < 1.5
                ? "That is more than a large gas ring gives a pot (about 1030\u00a0to\u00a01090\u00a0W)."
                : "That is about " + FigureFormat.rounded(times, 2)
                        + " times what a large gas ring gives a pot: too fierce for " + "everyday cooking.";
    }
}
