package simmerpoint.answer.words;

import simmerpoint.study.pan.MoveStudy.Move;
import simmerpoint.units.DecimalFormatter;
import simmerpoint.units.InchLength;
import simmerpoint.units.UnitSystem;

/** The moves of the pan in a builder's words. */
public final class MoveWords {
    private static final double SMALL = 9.95;
    private static final int FEWEST_ROWS = 5;

    private final UnitSystem system;

    /** In the units of {@code system}. */
    public MoveWords(UnitSystem system) {
        this.system = system;
    }

    /** "17 cm", "6 3/4 in": to the millimetre or the quarter of an inch, from 10 on to the centimetre or the half inch. */
    public String alone(double metres) {
        return alone(metres, Math.abs(metres / system.shortUnitMetres()) < SMALL ? 1 : 0);
    }

    /** The same with so many decimals; each halves an inch once more. */
    public String alone(double metres, int decimals) {
        double x = metres / system.shortUnitMetres();
        return (system == UnitSystem.INCH ? InchLength.fraction(x, parts(decimals)) : FigureFormat.fixed(x, decimals))
                + unit();
    }

    /** As one writes it into a scenario: "-28 cm", "6.75 in". */
    public String typed(double metres) {
        double x = metres / system.shortUnitMetres();
        return DecimalFormatter.stripped(FigureFormat.fixed(x, Math.abs(x) < SMALL ? 1 : 0))
                        .replace('\u2212', '-')
                + unit();
    }

    /** The number that {@link #alone(double, int)} shows, in the short unit. */
    public double number(double metres, int decimals) {
        double parts = system == UnitSystem.INCH ? parts(decimals) : Math.pow(10, decimals);
        return Math.rint(metres / system.shortUnitMetres() * parts) / parts;
    }

    private static int parts(int decimals) {
        return 2 << decimals;
    }

    /** A step between rows of a table for a move over so many metres: 10 cm or 4 in, and less where that gives few rows. */
    public double tableStep(double rangeMetres) {
        double[] steps = system == UnitSystem.INCH ? new double[] {0.5, 1, 2, 4} : new double[] {1, 2, 5, 10};
        double range = rangeMetres / system.shortUnitMetres();
        double wanted = steps[steps.length - 1];
        for (int k = steps.length - 1; k >= 0 && range / steps[k] < FEWEST_ROWS; k--) {
            wanted = steps[Math.max(0, k - 1)];
        }
        return wanted * system.shortUnitMetres();
    }

    /** A length in the short unit, alone, as a hand sets it: whole centimetres, half inches, with its sign. */
    public String step(double metres) {
        double x = metres / system.shortUnitMetres();
        String size = system == UnitSystem.INCH ? InchLength.fraction(x, 2) : FigureFormat.fixed(x, 0);
        return size.startsWith("\u2212") || size.equals("0") ? size : "+" + size;
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

    /** What to do, for instance "raise the pan by 18 cm". */
    public String instruction(Move move, double offset) {
        String length = alone(Math.abs(offset));
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
        return FigureFormat.NBSP + system.shortUnit();
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
