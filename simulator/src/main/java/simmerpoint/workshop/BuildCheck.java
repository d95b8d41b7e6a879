package simmerpoint.workshop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import simmerpoint.dish.Profile;
import simmerpoint.units.UnitSystem;

/**
 * Lengths to measure on the finished dish, m.
 *
 * @param across from a rib's tip through the axis to the opposite tip, for each length of rib that has such a pair, the longest first
 * @param betweenTips from one rib's tip to the next one's, each different length once
 * @param depths below a straight edge laid across the longest ribs' tips, from the middle outwards
 * @param acrossLongest whether a straight edge can lie on the tips of two of the longest ribs
 */
public record BuildCheck(List<Across> across, List<Between> betweenTips, List<Depth> depths, boolean acrossLongest) {
    private static final int STEPS = 6;
    private static final double CENTIMETRE = 0.01;

    /** Lengths that differ by less are alike, m. */
    private static final double ALIKE = 1e-3;

    /**
     * Across the rim.
     *
     * @param rib letter of the ribs; none where all are alike
     * @param pairs numbers of opposite ribs, from 1; none where all are alike
     * @param metres how far: from tip to tip, or to the middle of an edge if ribs are odd in number
     */
    public record Across(String rib, List<List<Integer>> pairs, double metres) {}

    /**
     * From tip to tip of two neighbours.
     *
     * @param first letter of one; none where all are alike
     * @param second letter of the other
     * @param metres how far
     */
    public record Between(String first, String second, double metres) {}

    /**
     * A depth.
     *
     * @param radius distance from the axis, m
     * @param depth below the longest ribs' tips, m
     */
    public record Depth(double radius, double depth) {}

    /** Keeps copies. */
    public BuildCheck {
        across = List.copyOf(across);
        betweenTips = List.copyOf(betweenTips);
        depths = List.copyOf(depths);
    }

    /** Whether ribs are of several lengths, or some are missing. */
    public boolean uneven() {
        return across.isEmpty() || !across.get(0).pairs().isEmpty();
    }

    /** Depths at round distances: whole centimetres or half inches, the first at the hub's edge or just outside it. */
    static BuildCheck of(RibShape rib, UnitSystem units) {
        List<Across> across = across(rib);
        boolean longest = !across.isEmpty()
                && across.get(0).rib().equals(rib.letter(rib.lengths().get(0)));
        return new BuildCheck(across, between(rib), depths(rib, units), longest);
    }

    private static List<Depth> depths(RibShape rib, UnitSystem units) {
        double rim = rib.rim();
        Profile profile = rib.profile();
        double step = units == UnitSystem.METRIC ? CENTIMETRE : units.shortUnitMetres() / 2;
        double first = step * Math.ceil(rib.hub() / step - 1e-9);
        return IntStream.range(0, STEPS)
                .mapToDouble(k -> first + step * Math.rint((rim - first) * k / STEPS / step))
                .filter(r -> r < rim - step / 4)
                .distinct()
                .mapToObj(r -> new Depth(r, profile.height(rim) - profile.height(r)))
                .toList();
    }

    private static List<Across> across(RibShape rib) {
        int count = rib.count();
        double rim = rib.rim();
        if (rib.standing() == count && rib.lengths().size() == 1) {
            double other = count % 2 == 0 ? rim : rim * Math.cos(Math.PI / count);
            return List.of(new Across("", List.of(), rim + other));
        }
        List<Across> all = new ArrayList<>();
        for (double length : rib.lengths()) {
            List<Integer> numbers = rib.ofLength(length);
            List<List<Integer>> pairs = numbers.stream()
                    .filter(k -> count % 2 == 0 && numbers.contains(k + count / 2))
                    .map(k -> List.of(k, k + count / 2))
                    .toList();
            if (!pairs.isEmpty()) {
                all.add(new Across(rib.letter(length), pairs, 2 * length));
            }
        }
        return all;
    }

    private static List<Between> between(RibShape rib) {
        List<Between> all = new ArrayList<>();
        List<Double> ends = rib.ribs().ends();
        for (int k = 0; k < ends.size(); k++) {
            double one = ends.get(k);
            double next = ends.get((k + 1) % ends.size());
            if (one > 0 && next > 0) {
                Between between = between(rib, Math.max(one, next), Math.min(one, next));
                if (all.stream().noneMatch(other -> isAlike(between, other))) {
                    all.add(between);
                }
            }
        }
        all.sort(Comparator.comparing(Between::first).thenComparing(Between::second));
        return all;
    }

    private static boolean isAlike(Between a, Between b) {
        return a.first().equals(b.first())
                && a.second().equals(b.second())
                && Math.abs(a.metres() - b.metres()) < ALIKE;
    }

    /** The law of cosines, and how much higher one tip is. */
    private static Between between(RibShape rib, double longer, double shorter) {
        double plan = longer * longer + shorter * shorter - 2 * longer * shorter * Math.cos(2 * Math.PI / rib.count());
        double up = rib.profile().height(longer) - rib.profile().height(shorter);
        return new Between(rib.letterOf(longer), rib.letterOf(shorter), Math.sqrt(plan + up * up));
    }
}
