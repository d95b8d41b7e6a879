package simmerpoint.study.trace;

import simmerpoint.scenario.doubts.DoubtSize;

/**
 * What one cause brings to the range of the cooking power.
 *
 * @param name for instance "dust on the mirror"
 * @param share of the variance that this cause brings alone, 0 to 1
 * @param size how badly it is known
 * @param given whether the scenario itself says how badly it is known
 * @param source who says how badly it is known
 * @param measurement what would tell it better, as an order to the reader; empty where nothing can
 */
public record DoubtShare(String name, double share, DoubtSize size, boolean given, String source, String measurement) {
    /** Width of the range that is left if this were known exactly, as a share of the present width. */
    public double widthWithout() {
        return Math.sqrt(Math.max(0, 1 - share));
    }
}
