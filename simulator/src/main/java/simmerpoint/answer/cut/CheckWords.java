package simmerpoint.answer.cut;

import java.util.List;
import java.util.stream.Collectors;
import simmerpoint.units.SawLength;
import simmerpoint.units.UnitSystem;
import simmerpoint.workshop.BuildCheck;

/**
 * What to measure on the finished dish.
 *
 * @param check the lengths
 * @param units for them
 */
public record CheckWords(BuildCheck check, UnitSystem units) {
    /** How far tips are from each other, in a sentence. */
    String tips() {
        if (!check.uneven()) {
            return "Across the rim, from a rib\u2019s tip through the middle, it must be "
                    + saw(check.across().get(0).metres()) + ", from one rib\u2019s tip to the next "
                    + saw(check.betweenTips().get(0).metres()) + ".";
        }
        String across = check.across().stream()
                .map(a -> (a.rib() + " " + saw(a.metres())).trim())
                .collect(Collectors.joining(", "));
        String between = check.betweenTips().stream()
                .map(b -> (letters(b) + " " + saw(b.metres())).trim())
                .collect(Collectors.joining(", "));
        return (across.isEmpty()
                        ? ""
                        : "From a rib\u2019s tip through the middle to the tip of one as long opposite it must be: "
                                + across + ". ")
                + "From one rib\u2019s tip to the next: " + between + ".";
    }

    /** "A to B", or nothing where all are alike. */
    public static String letters(BuildCheck.Between between) {
        return between.first().isEmpty() ? "" : between.first() + " to " + between.second();
    }

    /** Where to lay a straight edge, the beginning of a sentence. */
    public String straightEdge() {
        return check.uneven()
                ? "Lay a straight edge on the tips of two of the longest ribs, "
                        + pairs(check.across().get(0).pairs()) + ","
                : "Lay a straight edge across the rim, through the middle,";
    }

    private static String pairs(List<List<Integer>> pairs) {
        return pairs.stream().map(pair -> pair.get(0) + " and " + pair.get(1)).collect(Collectors.joining(" or "));
    }

    private String saw(double metres) {
        return SawLength.text(metres, units);
    }
}
