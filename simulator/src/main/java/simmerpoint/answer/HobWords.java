package simmerpoint.answer;

/**
 * What watts going into a pan mean to someone who cooks on a gas hob.
 *
 * <p>Into a pot on a household gas ring: small 570 to 600 W, medium 800 to 850 W, large 1030 to 1090 W. Derived here from
 * ring ratings of 1000, 1400 and 1800 kcal/h (1.16, 1.63, 2.09 kW; ENARGAS, the gas regulator of Argentina) times 0.49 to
 * 0.52, the share that reaches a lidded pot over natural and bottled gas (ENARGAS 2020, figure 6). A lidded pot of 1 to
 * 5 litres is kept simmering by 100 to 250 W: derived here from a loss of 1.3 to 3 W/K at 80 K above the air. Rings differ
 * by maker and country, so that the bands are widened by 5 % on either side before a dish is said to be outside them.
 */
final class HobWords {
    private static final double SLACK = 0.05;

    private enum Ring {
        SMALL("small", 570, 600),
        MEDIUM("medium", 800, 850),
        LARGE("large", 1030, 1090);

        final String name;
        final double low;
        final double high;

        Ring(String name, double low, double high) {
            this.name = name;
            this.low = low * (1 - SLACK);
            this.high = high * (1 + SLACK);
        }
    }

    private HobWords() {}

    /** One sentence that compares {@code watts} taken up by a pan with a gas hob. */
    static String sentence(double watts) {
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
        for (Ring ring : Ring.values()) {
            if (watts < ring.low) {
                return below.isEmpty()
                        ? "That is less than a small gas ring gives a pot (about 570\u00a0to\u00a0600\u00a0W) and more than a "
                                + "lidded pot of 1\u00a0to\u00a05\u00a0litres needs to simmer (100\u00a0to\u00a0250\u00a0W)."
                        : "That is between what a " + below + " and a " + ring.name + " gas ring give a pot.";
            }
            if (watts <= ring.high) {
                return "That is about what a " + ring.name + " gas ring gives a pot.";
            }
            below = ring.name;
        }
        double times = watts / 1060;
        return times < 1.5
                ? "That is more than a large gas ring gives a pot (about 1030\u00a0to\u00a01090\u00a0W)."
                : "That is about " + Figures.rounded(times, 2)
                        + " times what a large gas ring gives a pot: too fierce for " + "everyday cooking.";
    }
}
