package simmerpoint.answer.compare;

import java.util.List;
import java.util.stream.Collectors;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.SkyWords;
import simmerpoint.dish.CutTrait;
import simmerpoint.pan.Pan;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.compare.ComparedRow;
import simmerpoint.study.compare.Comparison;

/** Words for compared cookers that table, sentences and picture share. */
public final class CompareWords {
    private final boolean anyPan;
    private final boolean anyDisc;

    /** For the cookers of this comparison. */
    public CompareWords(Comparison comparison) {
        anyPan = comparison.rows().stream().anyMatch(CompareWords::isPan);
        anyDisc = !comparison.rows().stream().allMatch(CompareWords::isPan);
    }

    private static boolean isPan(ComparedRow row) {
        return row.variant().scenario().target() instanceof Pan;
    }

    boolean anyPan() {
        return anyPan;
    }

    boolean anyDisc() {
        return anyDisc;
    }

    /** What the light falls on: "pan", "disc", or "target" where there are both. */
    public String noun() {
        return !anyPan ? "disc" : anyDisc ? "target" : "pan";
    }

    /** Head of the watts, on three lines. */
    String wattsHead() {
        return !anyPan ? "on the\ndisc\nW" : anyDisc ? "caught,\nin water\nW" : "into\nwater\nW";
    }

    /** "into the water". */
    public String where() {
        return !anyPan ? "on the disc" : anyDisc ? "caught by the disc or into the water" : "into the water";
    }

    /** How many panels are to be cut. */
    String panels(ComparedRow row) {
        return row.variant().scenario().dish().cut().has(CutTrait.PANELS) ? FigureFormat.count(row.panels()) : "none";
    }

    /** An angle in degrees, to two digits that count. */
    static String degrees(Estimate radians) {
        return FigureFormat.rounded(Math.toDegrees(radians.value()), 2);
    }

    /** Minutes without their unit, as {@link SkyWords#minutes} has them. */
    public static String minutes(double seconds) {
        return SkyWords.minutes(seconds / 60).replace(FigureFormat.NBSP + "min", "");
    }

    /** "a", "a and b", "a, b and c", "a, b, c and 4 more". */
    static String enumerated(List<String> names, int most) {
        if (names.size() > most) {
            return String.join(", ", names.subList(0, most)) + " and " + (names.size() - most) + " more";
        }
        return names.size() < 2
                ? String.join("", names)
                : names.stream().limit(names.size() - 1L).collect(Collectors.joining(", ")) + " and "
                        + names.get(names.size() - 1);
    }
}
