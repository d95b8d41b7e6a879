package simmerpoint.answer.words;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import simmerpoint.dish.cut.OffAxisShell;
import simmerpoint.dish.cut.ShellTape;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.units.PlusMinus;

/**
 * What the tape measures of a shell beside its axis come to, each figure with how badly it is known. A ± is two standard deviations, as in
 * the file.
 *
 * @param shell of which shell
 * @param sunRadians how high the sun stands
 * @param figures in the reader's units
 */
public record ShellWords(OffAxisShell shell, double sunRadians, FigureFormat figures) {
    /** Of a scenario whose dish is such a shell. */
    public static Optional<ShellWords> of(Scenario scenario, FigureFormat figures) {
        return scenario.dish().cut() instanceof OffAxisShell shell
                ? Optional.of(new ShellWords(shell, scenario.sun().elevationRadians(), figures))
                : Optional.empty();
    }

    /** "54 ± 1 cm from the lower end of the rim, 96 ± 2 cm from the upper". */
    public String strings() {
        String near = shell.nearEndUp() ? "upper" : "lower";
        String far = shell.nearEndUp() ? "lower" : "upper";
        return length(ShellTape::nearString) + " from the " + near + " end of the rim, " + length(ShellTape::farString)
                + " from the " + far;
    }

    /** Where the focus is and how to find it. */
    public String focus() {
        return "By the tape the shell\u2019s focal length is " + length(ShellTape::focalLength) + ". Its focus is "
                + strings() + " end: two strings of these lengths meet there.";
    }

    /** How the rim stands when the axis points at the sun. */
    public String facing() {
        double face =
                sunRadians + (shell.nearEndUp() ? 1 : -1) * shell.supposed().tilt();
        return "Its rim leans " + tilt() + " from square to the axis: with the sun " + figures.degrees(sunRadians)
                + " high the open side looks " + figures.degrees(Math.abs(face))
                + (face < 0 ? " below level." : " above level.");
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
