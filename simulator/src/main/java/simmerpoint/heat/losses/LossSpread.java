package simmerpoint.heat.losses;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.distribution.NormalDistribution;
import simmerpoint.uncertainty.LikelyRange;

/**
 * Uncertainty of the losses as a fixed sample of pans: both factors log-normal and independent, one pan in ten above 1.35
 * for convection and radiation (the loss of a pan is known to some 30 to 40 %) and above 1.5 for evaporation (± 50 %, from
 * the scatter of published single measurements).
 *
 * <p>21 pans on a Fibonacci lattice: each factor takes each of 21 equally likely values once, in an order that pairs every
 * part of one with every part of the other (a Latin square of rank 1; derived here). Results are computed for each pan, so
 * non-linear results and pans that never boil are included.
 */
public final class LossSpread {
    /** One pan in ten loses more than this times the likely convection and radiation. */
    public static final double DRY_UPPER_TENTH = 1.35;

    /** One pan in ten loses more than this times the likely vapour. */
    public static final double EVAPORATION_UPPER_TENTH = 1.5;

    private static final int PANS = 21;
    private static final int STEP = 13;

    /** The shift with the least correlation of the two factors' logarithms, 0.002, and a symmetric set. */
    private static final int SHIFT = 6;

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);
    private static final double UPPER_TENTH = NORMAL.inverseCumulativeProbability(0.9);
    private static final List<LossFactors> ALL = draw();

    private LossSpread() {}

    /** The sample, all equally likely. */
    public static List<LossFactors> all() {
        return ALL;
    }

    /** The range of a result over the sample. */
    public static LikelyRange range(ToDoubleFunction<LossFactors> result) {
        double[] values = ALL.parallelStream().mapToDouble(result).toArray();
        return LikelyRange.ofSample(result.applyAsDouble(LossFactors.LIKELY), values);
    }

    private static List<LossFactors> draw() {
        List<LossFactors> set = new ArrayList<>(PANS);
        for (int i = 0; i < PANS; i++) {
            set.add(new LossFactors(
                    factor((i + 0.5) / PANS, DRY_UPPER_TENTH),
                    factor(((i * STEP + SHIFT) % PANS + 0.5) / PANS, EVAPORATION_UPPER_TENTH)));
        }
        return List.copyOf(set);
    }

    private static double factor(double share, double upperTenth) {
        return Math.exp(Math.log(upperTenth) * NORMAL.inverseCumulativeProbability(share) / UPPER_TENTH);
    }
}
