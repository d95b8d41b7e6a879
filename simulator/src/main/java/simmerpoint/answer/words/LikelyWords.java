package simmerpoint.answer.words;

import java.util.List;
import java.util.Optional;
import simmerpoint.answer.Columns;
import simmerpoint.answer.Item;
import simmerpoint.answer.Section;
import simmerpoint.answer.SectionBuilder;
import simmerpoint.study.trace.DoubtShare;
import simmerpoint.study.trace.LikelyResult;
import simmerpoint.uncertainty.LikelyRange;
import simmerpoint.units.UnitSystem;

/** What is likely over all doubts, and where the doubt comes from, in words. */
public final class LikelyWords {
    /** What four in five are, behind a likely figure. */
    public static final String FOUR_IN_FIVE = "four in five such cookers: ";

    private static final int DIGITS = 2;

    /** Less than this share of the variance is not worth a line. */
    private static final double WORTH_A_LINE = 0.005;

    private LikelyWords() {}

    /** "480 W", to the digits that its range deserves. */
    public static String likely(LikelyRange watts) {
        return rounded(watts.likely(), watts) + FigureFormat.NBSP + "W";
    }

    /** "410 to 550 W". */
    public static String span(LikelyRange watts) {
        return FigureFormat.span(rounded(watts.low(), watts), rounded(watts.high(), watts)) + FigureFormat.NBSP + "W";
    }

    /** "about 480 W (four in five such cookers: 410 to 550 W)"; the brackets only where the range is one. */
    public static String power(LikelyRange watts) {
        return "about " + likely(watts) + (isRange(watts) ? " (" + FOUR_IN_FIVE + span(watts) + ")" : "");
    }

    /** " (likely 480 W; four in five such cookers: 410 to 550 W)" behind a figure for the scenario as given; empty if it was not worked out. */
    public static String behind(Optional<LikelyResult> likely) {
        return likely.map(LikelyResult::power)
                .filter(LikelyWords::isRange)
                .map(watts -> " (likely " + likely(watts) + "; " + FOUR_IN_FIVE + span(watts) + ")")
                .orElse("");
    }

    /** Whether its ends differ in the digits that are shown. */
    private static boolean isRange(LikelyRange watts) {
        return !rounded(watts.low(), watts).equals(rounded(watts.high(), watts));
    }

    /** Two digits of the largest figure of the range. */
    public static String rounded(double figure, LikelyRange range) {
        double largest = Math.max(Math.abs(range.low()), Math.abs(range.high()));
        int decimals = largest > 0 ? DIGITS - 1 - (int) Math.floor(Math.log10(largest)) : 0;
        return FigureFormat.fixed(figure, decimals);
    }

    /** The doubt that decides; what a pan loses, where no other was looked at. */
    public static String decides(Optional<LikelyResult> likely) {
        return likely.map(result -> result.worthMeasuring()
                        .map(DoubtShare::name)
                        .orElse("luck in gluing, and on what causes do together"))
                .orElse("what the pan loses");
    }

    /** What the doubt comes from most and how to know better. */
    public static Optional<String> worthMeasuring(LikelyResult result) {
        return result.worthMeasuring()
                .map(most -> "Most of the doubt comes from " + most.name() + ". To narrow it: " + most.measurement()
                        + "; with that known exactly the range would be " + percent(1 - most.widthWithout())
                        + " narrower.");
    }

    /** How the range was found. */
    public static String method(LikelyResult result) {
        return "The range is the 10th to 90th percentile over " + FigureFormat.count(result.cookers())
                + " cookers, each with mirrors, gluing, aim, pan, wind and sun as they may turn out; the likely figure is their"
                + " median. A \u00b1 behind a figure of the scenario says how badly you know it.";
    }

    /** Where the doubt comes from, cause by cause. */
    public static Section section(LikelyResult result, UnitSystem system) {
        List<DoubtShare> told =
                result.shares().stream().filter(s -> s.share() >= WORTH_A_LINE).toList();
        Item.Table table = Columns.<DoubtShare>none()
                .with("what is not known exactly", DoubtShare::name)
                .with("share of\nthe doubt", s -> percent(s.share()))
                .with("how badly it is known", s -> badly(s, system))
                .table(told);
        SectionBuilder out = Section.headed("Where the doubt comes from")
                .say("What it brings is likely " + power(result.power()) + ".");
        if (!told.isEmpty()) {
            out.add(table)
                    .say(
                            "Shares are of the variance that each cause brings alone; they need not add up to a hundred, since they"
                                    + " are estimates and causes act together. Beyond a \u00b1 lies one figure in twenty; a factor of 2"
                                    + " means that four in five lie between half the figure and twice the figure.")
                    .say(worthMeasuring(result));
        }
        return out.say(method(result)).build();
    }

    private static String badly(DoubtShare doubt, UnitSystem system) {
        String size = doubt.size().in(system);
        return size.isEmpty() ? "" : size + (doubt.given() ? ", as you say" : ", usually");
    }

    private static String percent(double share) {
        long whole = Math.round(100 * share);
        return (whole < 1 ? "<1" : Long.toString(whole)) + FigureFormat.NBSP + "%";
    }
}
