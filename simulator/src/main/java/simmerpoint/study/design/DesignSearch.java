package simmerpoint.study.design;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import simmerpoint.study.trace.Progress;

/**
 * Finds, for every number of panels, the least diameter that brings the wanted watts with the focal length that suits it
 * best. Taken for granted, and checked against trying everything in a test: at the best focal length the watts of one
 * layout grow with its diameter up to where they are enough, and have one hill over the focal length.
 */
final class DesignSearch {
    private static final int LONGEST_STEP = 8;
    private static final int COARSE = 7;

    /** Watts grow with some power of the diameter: a first guess, soon replaced by what was seen. */
    static final double GROWTH = 2.5;

    /** From so many looks on at one layout every other diameter is halfway, however the watts run. */
    private static final int LOOKS = 4;

    private static final double[] SHARES = {1, 0.85, 0.7};
    /** A focal length that suits a neighbour is never this far below the best. */
    private static final double HOPELESS = 0.8;

    private final DesignTrials trials;
    private final DesignLimits limits;
    private final Map<PanelLayout, Integer> lastFocal = new HashMap<>();
    private int neighbour;

    DesignSearch(DesignTrials trials, DesignLimits limits) {
        this.trials = trials;
        this.limits = limits;
    }

    /** A dish and its watts as the search sees them. */
    record Found(DishCandidate candidate, double watts) {}

    /** The front: least diameter by number of panels, fewest panels first, none of them beaten by another in both. */
    List<Found> front(double wanted, Progress progress) {
        List<Found> front = new ArrayList<>();
        List<PanelLayout> layouts = limits.layouts();
        for (int k = 0; k < layouts.size(); k++) {
            progress.report((double) k / layouts.size(), trials.traced() + " dishes tried");
            int most = front.isEmpty()
                    ? limits.diameter().to()
                    : front.get(front.size() - 1).candidate().diameterCentimetres() - 1;
            if (most < limits.diameter().from()) {
                break;
            }
            least(layouts.get(k), wanted, most).ifPresent(front::add);
        }
        return withoutBeaten(front);
    }

    /** The first that brings the watts, going up by panels. */
    Optional<Found> first(double wanted, Progress progress) {
        List<PanelLayout> layouts = limits.layouts();
        for (int k = 0; k < layouts.size(); k++) {
            progress.report((double) k / layouts.size(), trials.traced() + " dishes tried");
            Optional<Found> found =
                    least(layouts.get(k), wanted, limits.diameter().to());
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    /** Among equal numbers of panels the last found is the smallest. */
    private static List<Found> withoutBeaten(List<Found> front) {
        List<Found> out = new ArrayList<>();
        for (Found found : front) {
            int last = out.size() - 1;
            if (last >= 0
                    && out.get(last).candidate().layout().panels()
                            == found.candidate().layout().panels()) {
                out.set(last, found);
            } else {
                out.add(found);
            }
        }
        return out;
    }

    /**
     * The least dish of one layout, no larger than {@code most} cm, that brings the watts. Where watts fall again towards
     * the largest dishes, since their panels outgrow the pan, smaller ones are looked at too.
     */
    Optional<Found> least(PanelLayout layout, double wanted, int most) {
        Optional<Found> start = enough(layout, wanted, most);
        if (start.isEmpty()) {
            return start;
        }
        Found enough = start.get();
        Found little = null;
        int low = limits.diameter().from() - 1;
        for (int look = 1; enough.candidate().diameterCentimetres() - low > 1; look++) {
            int high = enough.candidate().diameterCentimetres();
            double guess = look > LOOKS && look % 2 == 0 ? 0.5 * (low + high) : guess(little, enough, wanted);
            Found best = best(layout, Math.max(low + 1, Math.min(high - 1, (int) Math.ceil(guess))));
            if (best.watts() >= wanted) {
                enough = best;
            } else {
                little = best;
                low = best.candidate().diameterCentimetres();
            }
        }
        return Optional.of(enough);
    }

    /** The diameter that brings just what is wanted if watts run straight between two dishes, or grow as usual from the larger one. */
    private static double guess(Found little, Found enough, double wanted) {
        double high = enough.candidate().diameterCentimetres();
        if (little == null || !Double.isFinite(little.watts())) {
            return high - (enough.watts() - wanted) * high / (GROWTH * Math.max(1, Math.abs(enough.watts())));
        }
        double low = little.candidate().diameterCentimetres();
        return low + (high - low) * (wanted - little.watts()) / (enough.watts() - little.watts());
    }

    private Optional<Found> enough(PanelLayout layout, double wanted, int most) {
        double last = Double.NEGATIVE_INFINITY;
        for (double share : SHARES) {
            int diameter = (int) Math.round(share * most);
            if (diameter < limits.diameter().from()) {
                break;
            }
            Found best = hopeless(layout, diameter, wanted) ? at(layout, diameter, neighbour) : best(layout, diameter);
            if (best.watts() >= wanted) {
                return Optional.of(best);
            }
            if (best.watts() < last) {
                break;
            }
            last = best.watts();
        }
        return Optional.empty();
    }

    /** Whether the focal length that suited a layout before brings too little for any other to make up for. */
    private boolean hopeless(PanelLayout layout, int diameter, double wanted) {
        int near = lastFocal.getOrDefault(layout, neighbour);
        double watts = near > 0 ? at(layout, diameter, near).watts() : Double.NEGATIVE_INFINITY;
        return Double.isFinite(watts) && watts < HOPELESS * wanted;
    }

    /** The dish of most watts within the limits, looked for among the largest of every layout; for what cannot be met. */
    Optional<Found> strongest(Progress progress) {
        Found most = null;
        List<PanelLayout> layouts = limits.layouts();
        for (int k = layouts.size() - 1; k >= 0; k--) {
            progress.report(1 - (k + 1.0) / layouts.size(), trials.traced() + " dishes tried");
            for (double share : SHARES) {
                int diameter = limits.diameter()
                        .clamp((int) Math.round(share * limits.diameter().to()));
                Found best = best(layouts.get(k), diameter);
                most = most == null || best.watts() > most.watts() ? best : most;
            }
        }
        return Optional.ofNullable(most).filter(m -> Double.isFinite(m.watts()));
    }

    /** The focal length that suits one layout and diameter best. */
    Found best(PanelLayout layout, int diameter) {
        int near = lastFocal.getOrDefault(layout, neighbour);
        Found start = near > 0 ? at(layout, diameter, near) : null;
        boolean known = start != null && Double.isFinite(start.watts());
        Found best = known ? climb(start, 1) : climb(at(layout, diameter, coarse(layout, diameter)), LONGEST_STEP);
        neighbour = best.candidate().focalCentimetres();
        lastFocal.put(layout, neighbour);
        return best;
    }

    private Found at(PanelLayout layout, int diameter, int focal) {
        DishCandidate candidate =
                new DishCandidate(layout, diameter, limits.focal().clamp(focal));
        return new Found(candidate, trials.watts(candidate, limits));
    }

    private int coarse(PanelLayout layout, int diameter) {
        int from = limits.focal().from();
        int to = limits.focal().to();
        List<DishCandidate> tried = new ArrayList<>();
        for (int k = 0; k < COARSE; k++) {
            // Evenly in the logarithm: what counts is the ratio to the diameter.
            int focal = (int) Math.round(from * Math.pow((double) to / from, k / (COARSE - 1.0)));
            tried.add(new DishCandidate(layout, diameter, limits.focal().clamp(focal)));
        }
        List<Double> watts = trials.wattsOf(tried, limits);
        int most = 0;
        for (int k = 1; k < COARSE; k++) {
            most = watts.get(k) > watts.get(most) ? k : most;
        }
        return tried.get(most).focalCentimetres();
    }

    /** Walks up the hill over the focal length by steps of so many cm, which grow as long as they lead up and are halved then. */
    private Found climb(Found start, int first) {
        Found best = start;
        int step = first;
        int way = 0;
        for (Found next = higher(best, step, way); focal(next) != focal(best); next = higher(best, step, way)) {
            way = Integer.signum(focal(next) - focal(best));
            step = Math.min(LONGEST_STEP, 2 * step);
            best = next;
        }
        for (step /= 2; step > 0; step /= 2) {
            for (Found next = higher(best, step, 0); focal(next) != focal(best); next = higher(best, step, 0)) {
                best = next;
            }
        }
        return best;
    }

    private static int focal(Found found) {
        return found.candidate().focalCentimetres();
    }

    /** The higher neighbour that way, of both ways where {@code way} is 0; {@code here} itself if none is higher. */
    private Found higher(Found here, int step, int way) {
        List<DishCandidate> tried = new ArrayList<>();
        for (int to : way == 0 ? new int[] {-1, 1} : new int[] {way}) {
            DishCandidate at = here.candidate();
            tried.add(new DishCandidate(
                    at.layout(), at.diameterCentimetres(), limits.focal().clamp(focal(here) + to * step)));
        }
        List<Double> watts = trials.wattsOf(tried, limits);
        Found best = here;
        for (int k = 0; k < tried.size(); k++) {
            best = watts.get(k) > best.watts() ? new Found(tried.get(k), watts.get(k)) : best;
        }
        return best;
    }
}
