package simmerpoint.answer.words;

import java.math.BigDecimal;
import simmerpoint.study.pan.MoveStudy.Move;
import simmerpoint.units.UnitSystem;

/** The moves of the pan in a builder's words, with every length in centimetres and in inches. */
public final class MoveWords {
    private final FigureFormat first;
    private final FigureFormat second;

    /** The units of {@code system} first, the others in brackets. */
    public MoveWords(UnitSystem system) {
        first = new FigureFormat(system);
        second = new FigureFormat(system == UnitSystem.INCH ? UnitSystem.METRIC : UnitSystem.INCH);
    }

    /** "17 cm (6.7 in)". */
    public String both(double metres) {
        return alone(metres) + " (" + length(second, metres) + ")";
    }

    /** "17 cm". */
    public String alone(double metres) {
        return length(first, metres);
    }

    /** The same with so many decimals. */
    public String alone(double metres, int decimals) {
        return FigureFormat.fixed(metres / first.system().shortUnitMetres(), decimals)
                + FigureFormat.NBSP
                + first.system().shortUnit();
    }

    /** The number that {@link #alone(double, int)} shows. */
    public BigDecimal number(double metres, int decimals) {
        return new BigDecimal(FigureFormat.fixed(metres / first.system().shortUnitMetres(), decimals)
                .replace('\u2212', '-'));
    }

    /** Centimetres to the millimetre, inches to the tenth. */
    private static String length(FigureFormat figures, double metres) {
        double x = metres / figures.system().shortUnitMetres();
        return FigureFormat.fixed(x, Math.abs(x) < 9.95 ? 1 : 0)
                + FigureFormat.NBSP
                + figures.system().shortUnit();
    }

    /** A length in the short unit, alone, as a hand sets it: whole centimetres, half inches; "−", "+" before it. */
    public String step(double metres) {
        double halves = first.system() == UnitSystem.INCH ? 2 : 1;
        double x = Math.round(metres / first.system().shortUnitMetres() * halves) / halves;
        String digits = FigureFormat.fixed(Math.floor(Math.abs(x)), 0);
        boolean half = Math.abs(x) % 1 > 0;
        String size = half ? (digits.equals("0") ? "" : digits) + "\u00bd" : digits;
        return (x < 0 ? "\u2212" : x > 0 ? "+" : "") + size;
    }

    /** In a table. */
    public static String brief(Move move) {
        return switch (move) {
            case PULL_BACK -> "along the axis";
            case SLIDE -> "dish slid";
            case RAISE -> "up and down";
            case SIDE -> "sideways";
        };
    }

    /** A heading. */
    public static String heading(Move move) {
        return switch (move) {
            case PULL_BACK -> "Pull-back: the pan along the dish\u2019s axis";
            case SLIDE -> "Slide: the dish along the ground";
            case RAISE -> "Raise: the pan up and down";
            case SIDE -> "Side: the pan to the right and left";
        };
    }

    /** What an offset above 0 means. */
    public static String positive(Move move) {
        return switch (move) {
            case PULL_BACK -> "away from the dish";
            case SLIDE -> "dish away from the sun";
            case RAISE -> "pan up";
            case SIDE -> "pan to the right (facing the sun)";
        };
    }

    /** What an offset below 0 means. */
    public static String negative(Move move) {
        return switch (move) {
            case PULL_BACK -> "towards the dish";
            case SLIDE -> "dish towards the sun";
            case RAISE -> "pan down";
            case SIDE -> "pan to the left (facing the sun)";
        };
    }

    /** What to do, for instance "raise the pan by 18 cm (7.1 in)". */
    public String instruction(Move move, double offset) {
        String length = both(Math.abs(offset));
        return switch (move) {
            case PULL_BACK ->
                offset >= 0
                        ? "pull the pan back by " + length + ", along the axis away from the dish"
                        : "bring the pan nearer to the dish by " + length + ", along the axis";
            case SLIDE ->
                offset >= 0
                        ? "slide the dish back by " + length + " along the ground, away from the sun"
                        : "slide the dish forward by " + length + " along the ground, towards the sun";
            case RAISE -> offset >= 0 ? "raise the pan by " + length : "lower the pan by " + length;
            case SIDE -> "shift the pan to the " + (offset >= 0 ? "right" : "left") + " by " + length;
        };
    }

    /** The same in one unit, to the step that a hand sets: "raise the pan 18 cm". */
    public String inShort(Move move, double offset) {
        String length = step(Math.abs(offset)).replace("+", "") + unit();
        return switch (move) {
            case PULL_BACK -> "move the pan " + length + (offset >= 0 ? " away from the dish" : " nearer to the dish");
            case SLIDE -> "slide the dish " + length + (offset >= 0 ? " away from the sun" : " towards the sun");
            case RAISE -> (offset >= 0 ? "raise" : "lower") + " the pan " + length;
            case SIDE -> "move the pan " + length + (offset >= 0 ? " to the right" : " to the left");
        };
    }

    /** Half of a stretch, each way: "4 cm either way". */
    public String margin(double stretchMetres) {
        return step(stretchMetres / 2).replace("+", "") + unit() + " of that";
    }

    private String unit() {
        return FigureFormat.NBSP + first.system().shortUnit();
    }

    /** Which way a step along the move goes, for instance "higher". */
    public static String way(Move move, int sign) {
        return switch (move) {
            case PULL_BACK -> sign > 0 ? "farther from the dish" : "nearer to the dish";
            case SLIDE -> sign > 0 ? "farther back from the sun" : "farther forward to the sun";
            case RAISE -> sign > 0 ? "higher" : "lower";
            case SIDE -> sign > 0 ? "farther to the right" : "farther to the left";
        };
    }
}
