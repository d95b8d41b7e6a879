package simmerpoint.answer.words;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import simmerpoint.dish.cut.OffAxisShell;
import simmerpoint.dish.cut.ShellTape;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.units.PlusMinus;
import simmerpoint.units.UnitSystem;

/**
 * What the tape measures of a shell beside its axis come to, each figure with how badly it is known. A ± is two standard deviations, as in
 * the file.
 *
 * @param shell of which shell
 * @param sunRadians how high the sun stands
 * @param figures in the reader's units
 */
public record ShellWords(OffAxisShell shell, double sunRadians, FigureFormat figures) {
    private static final double MILLIMETRE = 0.001;
    private static final double WEDGE = 0.2;
    private static final double WEDGE_INCHES = 8;

    /** Of a scenario whose dish is such a shell. */
    public static Optional<ShellWords> of(Scenario scenario, FigureFormat figures) {
        return scenario.dish().cut() instanceof OffAxisShell shell
                ? Optional.of(new ShellWords(shell, scenario.sun().elevationRadians(), figures))
                : Optional.empty();
    }

    /** The same of a shell that does not face the sun when it is aimed: its stick stands on a wedge. */
    public static Optional<ShellWords> leaning(Scenario scenario, FigureFormat figures) {
        return of(scenario, figures).filter(ShellWords::leans);
    }

    /** "54 ± 1 cm from the lower end of the rim, 96 ± 2 cm from the upper"; of a round one only that it is round. */
    public String strings() {
        return shell.seemsRound()
                ? length(ShellTape::focalLength)
                        + " in front of the middle: width equals height, this is a round dish, measure both again"
                : length(ShellTape::nearString) + " from the " + near() + " end of the rim, "
                        + length(ShellTape::farString) + " from the " + far();
    }

    /** Where the focus is, how to find it and which way to tip the rim. */
    public String focus() {
        String focal = "By the tape the shell\u2019s focal length is " + length(ShellTape::focalLength);
        if (shell.seemsRound()) {
            return focal + ". Width equals height: this is a round dish; measure both again. " + capital(tapeDoubt())
                    + ".";
        }
        return focal + ". Its focus is " + strings() + " end: two strings of these lengths meet there; " + tapeDoubt()
                + ". " + nearEnd() + " " + facing();
    }

    /** "1 mm of depth moves the focus by 7 mm; each ± is for a tape read to ± 2 mm". */
    public String tapeDoubt() {
        ShellTape all = shell.deviations();
        boolean alike = all.width() == all.height() && all.height() == all.depth();
        String read = alike
                ? "a tape read to " + plusMinus(all.depth())
                : "a width read to " + plusMinus(all.width()) + ", a height to " + plusMinus(all.height())
                        + " and a depth to " + plusMinus(all.depth());
        return depthCounts() + "; each \u00b1 is for " + read;
    }

    /** "1 mm of depth moves the focus by 7 mm". */
    public String depthCounts() {
        double step = figures.system() == UnitSystem.INCH ? UnitSystem.INCH.shortUnitMetres() / 16 : MILLIMETRE;
        return figures.length(step, 1) + " of depth moves the focus by "
                + figures.length(step * shell.supposed().focusPerDepth(), 1);
    }

    private String plusMinus(double deviation) {
        return "\u00b1 "
                + figures.length(PlusMinus.DEVIATIONS * deviation, figures.system() == UnitSystem.INCH ? 1 : 2);
    }

    /** How to tell which end of the rim is near. */
    private String nearEnd() {
        return "The " + near() + " end is the near one: the deepest place is nearer to it, "
                + figures.length(shell.supposed().deepestAt(), 2) + " from it, and the feed\u2019s arm was there.";
    }

    /** Which way to tip the rim when the axis points at the sun; nothing of a round one. */
    public String facing() {
        double face = sunRadians + tipped();
        boolean over = face > Math.PI / 2;
        return "Tip the rim " + tilt() + (tipped() < 0 ? " below" : " above") + " facing the sun: with the sun "
                + figures.degrees(sunRadians) + " high the open side looks "
                + (over
                        ? "straight up and " + figures.degrees(face - Math.PI / 2) + " beyond."
                        : figures.degrees(Math.abs(face)) + (face < 0 ? " below level." : " above level."));
    }

    private double tipped() {
        return (shell.nearEndUp() ? 1 : -1) * shell.supposed().tilt();
    }

    /** How to stand a stick along an axis that nobody sees; the rim's normal leans from it towards the near end. */
    public String stick() {
        double wedge = figures.system() == UnitSystem.INCH ? WEDGE_INCHES * UnitSystem.INCH.shortUnitMetres() : WEDGE;
        double tilt = shell.supposed().tilt();
        return "A shell has no axis to see, so the stick takes a wedge. Lay a straight board across the rim, from its lower"
                + " to its upper end, and on it a wedge " + figures.length(wedge, 2) + " long and "
                + figures.length(wedge * Math.tan(tilt), 2) + " high at its " + near()
                + " end. The stick stands square on the wedge: it leans "
                + FigureFormat.fixed(Math.toDegrees(tilt), 1) + "\u00b0 from square to the board, towards the " + far()
                + " end.";
    }

    /** How badly the wedge is known, and what to do about it. */
    public String stickAnew() {
        return "Put the wedge where the board stands out beyond the rim, out of the light. The tape knows the wedge\u2019s angle only as "
                + tilt()
                + ": once you have found the aim that heats best, set the stick anew, so that it throws no shadow.";
    }

    /** Whether the axis is another than that of a round dish. */
    public boolean leans() {
        return !shell.seemsRound();
    }

    private String near() {
        return shell.nearEndUp() ? "upper" : "lower";
    }

    private String far() {
        return shell.nearEndUp() ? "lower" : "upper";
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    private String tilt() {
        double degrees = Math.toDegrees(shell.supposed().tilt());
        return FigureFormat.withError(new Estimate(degrees, Math.toDegrees(doubt(ShellTape::tilt))), "") + "\u00b0";
    }

    private String length(ToDoubleFunction<ShellTape> figure) {
        return figures.length(new Estimate(figure.applyAsDouble(shell.supposed()), doubt(figure)));
    }

    private double doubt(ToDoubleFunction<ShellTape> figure) {
        return PlusMinus.DEVIATIONS * shell.doubt().of(figure);
    }
}
