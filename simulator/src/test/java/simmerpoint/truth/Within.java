package simmerpoint.truth;

/**
 * What a quadrature finds for a beam of 1 W/m² and a mirror that loses nothing.
 *
 * @param reflected all reflected light, W
 * @param within for each radius asked about, the light that crosses the target's plane within it, W
 */
record Within(double reflected, double[] within) {
    /** Share of the reflected light within the k-th radius. */
    double share(int k) {
        return within[k] / reflected;
    }

    /** Adds to the light within each radius. */
    static void add(double[] to, double[] from) {
        for (int k = 0; k < to.length; k++) {
            to[k] += from[k];
        }
    }
}
