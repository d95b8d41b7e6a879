package simmerpoint.study.design;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.study.build.ShapeTolerance;
import simmerpoint.study.trace.BetterHeight;

/**
 * What a search for a design has found.
 *
 * @param scenario what it began with
 * @param goal what was wanted
 * @param limits what was allowed
 * @param front dishes that do it, fewest panels first; none is beaten by another in both panels and diameter
 * @param fronts the same by watts, for the wanted watts and for less and more, as the search itself saw them
 * @param bound if nothing does it: the strongest dish within the limits, if any dish can be built at all
 * @param loosened for each limit that stands in the way alone: what would do it without that limit
 * @param tolerances how far the dish with the fewest panels may be off its plan, in millimetres
 * @param height where the pan would get clearly more from the dish with the fewest panels, if it would
 * @param run what it took
 */
public record DesignResult(
        Scenario scenario,
        DesignGoal goal,
        DesignLimits limits,
        List<DesignChoice> front,
        List<Front> fronts,
        Optional<DesignChoice> bound,
        Map<DesignLimits.Limit, DishCandidate> loosened,
        List<ShapeTolerance> tolerances,
        Optional<BetterHeight> height,
        Run run) {
    /**
     * Least diameters by number of panels for one amount of watts.
     *
     * @param watts wanted, W
     * @param candidates fewest panels first; empty if the limits do not allow so much
     */
    public record Front(double watts, List<DishCandidate> candidates) {
        /** The one with the fewest panels; empty if there is none. */
        public Optional<DishCandidate> fewestPanels() {
            return candidates.stream().findFirst();
        }

        /** The smallest one; empty if there is none. */
        public Optional<DishCandidate> smallestDish() {
            return candidates.stream().reduce((first, second) -> second);
        }
    }

    /**
     * What it took.
     *
     * @param dishes traced
     * @param searchRays rays for each of them
     * @param checkRays rays for each dish of the front
     * @param seed of the search
     * @param checkSeed of the check
     * @param threads used
     * @param seconds in all
     */
    public record Run(
            int dishes, long searchRays, long checkRays, long seed, long checkSeed, int threads, double seconds) {}

    /** Fewest panels; the smallest dish among those. */
    public Optional<DesignChoice> fewestPanels() {
        return front.stream().findFirst();
    }

    /** The smallest dish. */
    public Optional<DesignChoice> smallestDish() {
        return front.stream().min(Comparator.comparingInt(c -> c.candidate().diameterCentimetres()));
    }

    /** The one that costs least, if costs are known. */
    public Optional<DesignChoice> cheapest() {
        return front.stream()
                .filter(choice -> choice.cost().isPresent())
                .min(Comparator.comparingDouble(choice -> choice.cost().getAsDouble()));
    }

    /** The one that forgives most when it is aimed; what never loses so much within the range forgives most. */
    public Optional<DesignChoice> easiestAim() {
        return front.stream()
                .max(Comparator.comparingDouble(
                        c -> c.again().minutes().map(Estimate::value).orElse(Double.POSITIVE_INFINITY)));
    }
}
