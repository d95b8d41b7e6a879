package simmerpoint.study.design;

import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Makes a dish that the search found so large that four in five like it do what is wanted. What they have to spare grows with the
 * diameter; a few looks, each placed where the last ones say it is nought, find the centimetre.
 */
final class LargeEnough {
    private static final int MOST_LOOKS = 16;

    private final DishCandidate candidate;
    private final double wanted;
    private final ToDoubleFunction<DishCandidate> spare;
    private int low;
    private double lacking = Double.NaN;
    private int high;
    private double left = Double.NaN;

    /**
     * For one dish.
     *
     * @param candidate as the search found it
     * @param wanted watts wanted
     * @param spare watts that four in five have beyond what is wanted; not a number if a dish is not allowed, and then
     *     larger ones are not looked at
     */
    LargeEnough(DishCandidate candidate, double wanted, ToDoubleFunction<DishCandidate> spare) {
        this.candidate = candidate;
        this.wanted = wanted;
        this.spare = spare;
    }

    /**
     * The least diameter from that of the candidate up.
     *
     * @param most largest diameter, cm
     * @param grown centimetres by which it may well have to grow
     * @return empty if there is none
     */
    Optional<DishCandidate> upTo(int most, int grown) {
        low = candidate.diameterCentimetres() - 1;
        high = most + 1;
        int next = low + 1 + grown;
        for (int look = 0; look < MOST_LOOKS && high - low > 1; look++) {
            look(Math.max(low + 1, Math.min(high - 1, next)));
            next = next();
        }
        return Double.isNaN(left) ? Optional.empty() : Optional.of(with(high));
    }

    private DishCandidate with(int diameter) {
        return new DishCandidate(candidate.layout(), diameter, candidate.focalCentimetres());
    }

    private void look(int diameter) {
        double watts = spare.applyAsDouble(with(diameter));
        if (watts < 0) {
            low = diameter;
            lacking = watts;
        } else if (Double.isNaN(watts) && !Double.isNaN(left)) {
            low = diameter;
        } else {
            high = diameter;
            left = watts;
        }
    }

    /** Where nothing is to spare: on the line through both ends, or as watts usually grow. */
    private int next() {
        if (!Double.isNaN(lacking) && !Double.isNaN(left)) {
            return low + (int) Math.ceil((high - low) * lacking / (lacking - left));
        }
        double slope = DesignSearch.GROWTH * Math.max(1, Math.abs(wanted)) / candidate.diameterCentimetres();
        return Double.isNaN(left)
                ? Double.isNaN(lacking) ? (low + high) / 2 : low + (int) Math.ceil(-lacking / slope)
                : high - (int) Math.max(1, Math.floor(left / slope));
    }
}
