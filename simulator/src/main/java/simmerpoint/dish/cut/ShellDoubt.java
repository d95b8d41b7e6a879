package simmerpoint.dish.cut;

import java.util.function.ToDoubleFunction;

/**
 * How badly what follows from a shell's tape measures is known: first order, the lengths independent of each other.
 *
 * @param tape as measured
 * @param deviations standard deviation of each length, m
 */
public record ShellDoubt(ShellTape tape, ShellTape deviations) {
    /** Steps of the derivatives, m. */
    private static final double STEP = 1e-6;

    /** Standard deviation of a figure. */
    public double of(ToDoubleFunction<ShellTape> figure) {
        double w = part(figure, STEP, 0, 0) * deviations.width();
        double h = part(figure, 0, STEP, 0) * deviations.height();
        double d = part(figure, 0, 0, STEP) * deviations.depth();
        return Math.sqrt(w * w + h * h + d * d);
    }

    /** Derivative; one-sided where a rim wider than high would have no tilt. */
    private double part(ToDoubleFunction<ShellTape> figure, double w, double h, double d) {
        double up = figure.applyAsDouble(moved(w, h, d));
        double down = figure.applyAsDouble(moved(-w, -h, -d));
        double here = figure.applyAsDouble(tape);
        if (Double.isNaN(up) || Double.isNaN(down)) {
            return (Double.isNaN(up) ? here - down : up - here) / STEP;
        }
        return (up - down) / (2 * STEP);
    }

    private ShellTape moved(double w, double h, double d) {
        return new ShellTape(tape.width() + w, tape.height() + h, tape.depth() + d);
    }
}
