package simmerpoint.study.design;

import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Makes a dish that the search found so large that four in five like it do what is wanted. What they have to spare grows with the
 * diameter; a few looks, each placed where the last ones say it is nought, find the centimetre.
 */
final class LargeEnough {
    private static final int MOST_LOOKS = 16;

    /** From so many looks on each is halfway, however the watts run. */
    private static final int SECANTS = 8;

    private final DishCandidate candidate;
    private final double wanted;
    private final ToDoubleFunction<DishCandidate> spare;
    private int low;
    private int high;
    private boolean found;
    private Look last = new Look(0, Double.NaN);
    private Look before = last;

    /** What a dish of so many cm has to spare. */
    private record Look(int diameter, double watts) {}

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
            next = look >= SECANTS ? (low + high) / 2 : (int) Math.ceil(nought());
        }
        return found ? Optional.of(with(high)) : Optional.empty();
    }

    private DishCandidate with(int diameter) {
        return new DishCandidate(candidate.layout(), diameter, candidate.focalCentimetres());
    }

    private void look(int diameter) {
        double watts = spare.applyAsDouble(with(diameter));
        if (watts >= 0 || (Double.isNaN(watts) && !found)) {
            high = diameter;
            found = watts >= 0;
        } else {
            low = diameter;
        }
        if (!Double.isNaN(watts)) {
            before = last;
            last = new Look(diameter, watts);
        }
    }

    /** Where nothing is to spare: on the line through the last two looks, or as watts usually grow. */
    private double nought() {
        if (Double.isNaN(last.watts())) {
            return 0.5 * (low + high);
        }
        double slope = Double.isNaN(before.watts())
                ? DesignSearch.GROWTH * Math.max(1, Math.abs(wanted)) / candidate.diameterCentimetres()
                : (last.watts() - before.watts()) / (last.diameter() - before.diameter());
        return slope > 0 ? last.diameter() - last.watts() / slope : 0.5 * (low + high);
    }
}
