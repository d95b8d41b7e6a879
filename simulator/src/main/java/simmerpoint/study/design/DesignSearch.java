package simmerpoint.study.design;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.IntStream;
import simmerpoint.study.trace.Progress;

/**
 * Finds, for every number of panels, the least diameter that brings the wanted watts with the focal length that suits it
 * best. Taken for granted, and checked against trying everything in a test: at the best focal length the watts of one
 * layout grow with its diameter up to where they are enough. Over the focal length they may have several hills: a deep dish and
 * a flat one both do, with less between.
 */
final class DesignSearch {
    private static final int LONGEST_STEP = 8;

    /** Focal lengths of the first look at a layout, one to the next: two hills are not nearer to each other. */
    private static final double RATIO = 1.25;

    /** Sectors in a layout that stands for all of its cut and rings. */
    private static final int FEWEST = 3;

    /** A hill is remembered for the next layout if it is no lower than that share of the highest. */
    private static final double KEPT = 0.75;

    /** Layouts with so many times the sectors are looked at anew from end to end. */
    private static final double MORE_SECTORS = 1.25;

    /** Watts of a rival, as a share of the best. */
    private static final double RIVAL = 0.93;

    /** A hill is climbed again if its foot is no lower than that share of the highest. */
    private static final double WORTH = 0.9;

    /** Where a dish is not allowed, the next smaller one that is looked at. */
    private static final double SMALLER = 0.9;

    /** Watts grow with some power of the diameter: a first guess, soon replaced by what was seen. */
    static final double GROWTH = 2.5;

    /** From so many looks on at one layout every other diameter is halfway, however the watts run. */
    private static final int LOOKS = 4;

    private static final double[] SHARES = {1, 0.85, 0.7};
    /** A focal length that suits a neighbour is never this far below the best. */
    private static final double HOPELESS = 0.8;

    private final DesignTrials trials;
    private final DesignLimits limits;
    /** Focal lengths on top of the hills of each layout as last climbed, the highest first. */
    private final Map<PanelLayout, List<Integer>> tops = new HashMap<>();

    private List<Integer> neighbours = List.of();

    /** Sectors of the layout whose focal lengths were last looked at from end to end, by its cut and rings. */
    private final Map<PanelLayout, Integer> scanned = new HashMap<>();

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

    /** The same dish with other focal lengths that are nearly as good: with all doubts one of them may do with less. */
    List<DishCandidate> rivals(Found found) {
        DishCandidate best = found.candidate();
        return at(best.layout(), best.diameterCentimetres(), known(best.layout())).stream()
                .filter(other -> focal(other) != focal(found) && other.watts() >= share(RIVAL, found.watts()))
                .map(Found::candidate)
                .toList();
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
        Optional<Found> found = enough(layout, wanted, most).map(enough -> smaller(layout, wanted, enough));
        while (found.isPresent()) {
            // A hill that is not there for large dishes may be the highest for small ones.
            int next = found.get().candidate().diameterCentimetres() - 1;
            Found other = next < limits.diameter().from() ? found.get() : climbed(layout, hills(layout, next));
            if (other.equals(found.get()) || other.watts() < wanted) {
                return found;
            }
            found = Optional.of(smaller(layout, wanted, other));
        }
        return found;
    }

    /** From a dish that brings the watts down to the smallest. */
    private Found smaller(PanelLayout layout, double wanted, Found large) {
        Found enough = large;
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
        return enough;
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
        Found largest = largest(layout, wanted, most);
        int top = largest.candidate().diameterCentimetres();
        double last = Double.NEGATIVE_INFINITY;
        for (double share : SHARES) {
            int diameter = (int) Math.round(share * top);
            if (diameter < limits.diameter().from()) {
                break;
            }
            Found best = diameter == top ? largest : quick(layout, diameter, wanted);
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

    /** The largest dish of a layout that is allowed at all, no larger than {@code most} cm; one that brings the watts will do. */
    private Found largest(PanelLayout layout, double wanted, int most) {
        int beyond = most + 1;
        int diameter = most;
        Found best = quick(layout, diameter, wanted);
        while (!Double.isFinite(best.watts())
                && SMALLER * diameter >= limits.diameter().from()) {
            beyond = diameter;
            diameter = (int) (SMALLER * diameter);
            best = quick(layout, diameter, wanted);
        }
        while (Double.isFinite(best.watts()) && best.watts() < wanted && beyond - diameter > 1) {
            int middle = (diameter + beyond) / 2;
            Found next = quick(layout, middle, wanted);
            boolean allowed = Double.isFinite(next.watts());
            diameter = allowed ? middle : diameter;
            beyond = allowed ? beyond : middle;
            best = allowed ? next : best;
        }
        return best;
    }

    /** The best focal length, or one as good as any where none can bring enough. */
    private Found quick(PanelLayout layout, int diameter, double wanted) {
        return known(layout).stream()
                .findFirst()
                .map(focal -> at(layout, diameter, focal))
                .filter(found -> Double.isFinite(found.watts()) && found.watts() < HOPELESS * wanted)
                .orElseGet(() -> best(layout, diameter));
    }

    /** The dish of most watts within the limits, looked for among the largest of every layout; for what cannot be met. */
    Optional<Found> strongest(Progress progress) {
        Found most = null;
        List<PanelLayout> layouts = limits.layouts();
        for (int k = layouts.size() - 1; k >= 0; k--) {
            progress.report(1 - (k + 1.0) / layouts.size(), trials.traced() + " dishes tried");
            int top = largest(
                            layouts.get(k),
                            Double.NEGATIVE_INFINITY,
                            limits.diameter().to())
                    .candidate()
                    .diameterCentimetres();
            for (double share : SHARES) {
                int diameter = limits.diameter().clamp((int) Math.round(share * top));
                Found best = best(layouts.get(k), diameter);
                most = most == null || best.watts() > most.watts() ? best : most;
            }
        }
        return Optional.ofNullable(most).filter(m -> Double.isFinite(m.watts()));
    }

    /** The focal length that suits one layout and diameter best: watts may have several hills over it, and each is climbed. */
    Found best(PanelLayout layout, int diameter) {
        List<Found> starts = at(layout, diameter, known(layout));
        if (isUnlikeScanned(layout) || starts.stream().noneMatch(start -> Double.isFinite(start.watts()))) {
            starts = hills(layout, diameter);
        }
        return climbed(layout, starts);
    }

    private Found climbed(PanelLayout layout, List<Found> starts) {
        List<Integer> before = known(layout);
        double highest = starts.stream().mapToDouble(Found::watts).max().orElse(Double.NEGATIVE_INFINITY);
        List<Found> climbed = new ArrayList<>();
        for (Found start : starts) {
            boolean worth = Double.isFinite(start.watts()) && start.watts() >= share(WORTH, highest);
            climbed.add(worth ? climb(start, before.contains(focal(start)) ? 1 : LONGEST_STEP) : start);
        }
        climbed.sort(Comparator.comparingDouble(found -> -found.watts()));
        if (Double.isFinite(climbed.get(0).watts())) {
            double least = share(KEPT, climbed.get(0).watts());
            neighbours = climbed.stream()
                    .filter(found -> found.watts() >= least)
                    .map(DesignSearch::focal)
                    .distinct()
                    .toList();
            tops.put(layout, neighbours);
        }
        return climbed.get(0);
    }

    /** Whether none with about as many sectors was looked at from end to end: hills move slowly with them. */
    private boolean isUnlikeScanned(PanelLayout layout) {
        Integer last = scanned.get(new PanelLayout(layout.cut(), FEWEST, layout.rings()));
        return last == null || layout.sectors() > MORE_SECTORS * last || layout.sectors() < last;
    }

    /** That share of watts; of less than nothing as much less. */
    private static double share(double share, double watts) {
        return watts - (1 - share) * Math.abs(watts);
    }

    private List<Integer> known(PanelLayout layout) {
        return tops.getOrDefault(layout, neighbours);
    }

    private List<Found> at(PanelLayout layout, int diameter, List<Integer> focals) {
        List<DishCandidate> tried = focals.stream()
                .map(focal -> new DishCandidate(layout, diameter, focal))
                .toList();
        List<Double> watts = trials.wattsOf(tried, limits);
        return IntStream.range(0, tried.size())
                .mapToObj(k -> new Found(tried.get(k), watts.get(k)))
                .toList();
    }

    /** The highest of every hill that a coarse look finds, known tops among them. */
    private List<Found> hills(PanelLayout layout, int diameter) {
        scanned.put(new PanelLayout(layout.cut(), FEWEST, layout.rings()), layout.sectors());
        TreeSet<Integer> focals = new TreeSet<>(known(layout));
        // Evenly in the logarithm: what counts is the ratio to the diameter.
        double from = limits.focal().from();
        double to = limits.focal().to();
        int steps = (int) Math.ceil(Math.log(to / from) / Math.log(RATIO));
        for (int k = 0; k <= steps; k++) {
            focals.add((int) Math.round(from * Math.pow(to / from, (double) k / Math.max(1, steps))));
        }
        List<Found> all = at(layout, diameter, List.copyOf(focals));
        List<Found> hills = new ArrayList<>();
        for (int k = 0; k < all.size(); k++) {
            double before = k == 0 ? Double.NEGATIVE_INFINITY : all.get(k - 1).watts();
            double after = k + 1 == all.size()
                    ? Double.NEGATIVE_INFINITY
                    : all.get(k + 1).watts();
            if (all.get(k).watts() > before && all.get(k).watts() >= after) {
                hills.add(all.get(k));
            }
        }
        return hills.isEmpty() ? all.subList(0, 1) : hills;
    }

    private Found at(PanelLayout layout, int diameter, int focal) {
        DishCandidate candidate =
                new DishCandidate(layout, diameter, limits.focal().clamp(focal));
        return new Found(candidate, trials.watts(candidate, limits));
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
