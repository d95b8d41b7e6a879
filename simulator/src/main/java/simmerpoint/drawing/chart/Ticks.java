package simmerpoint.drawing.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.units.DecimalFormatter;

/** Round marks of scales: steps of 1, 2 or 5 times a power of ten. */
public final class Ticks {
    private static final double TINY = 1e-9;
    private static final double LEAST_APART = 40;
    private static final double BETWEEN = 16;

    private Ticks() {}

    /** The largest of 1, 2 or 5 times a power of ten that is not above {@code x}, which is above 0. */
    public static double below(double x) {
        double power = Math.pow(10, Math.floor(Math.log10(x)));
        double mantissa = x / power * (1 + TINY);
        return (mantissa >= 5 ? 5 : mantissa >= 2 ? 2 : 1) * power;
    }

    /** Marks from 0 to {@code top}, about {@code wanted} of them; just 0 if the top is 0. */
    public static List<Double> upTo(double top, int wanted) {
        return top > 0 ? between(0, top, wanted) : List.of(0.0);
    }

    /** Marks from one figure to a larger one, about {@code wanted} of them, 0 among them if it lies between. */
    public static List<Double> between(double low, double high, int wanted) {
        return between(low, high, below((high - low) / wanted));
    }

    /** Marks from one figure to a larger one as close as their text can stand beside each other, {@code perFigure} units apart. */
    public static List<Double> spaced(double low, double high, double perFigure, ToDoubleFunction<String> width) {
        double step = below(LEAST_APART / perFigure);
        while (true) {
            List<Double> marks = between(low, high, step);
            double widest = marks.stream()
                    .mapToDouble(m -> width.applyAsDouble(text(m)))
                    .max()
                    .orElse(0);
            if (step * perFigure >= Math.max(LEAST_APART, widest + BETWEEN) || marks.size() < 2) {
                return marks;
            }
            step = below(2.5 * step);
        }
    }

    private static List<Double> between(double low, double high, double step) {
        List<Double> marks = new ArrayList<>();
        double most = high + TINY * Math.max(Math.abs(high), step);
        for (long k = (long) Math.ceil(low / step - TINY); k * step <= most; k++) {
            marks.add(k * step);
        }
        return marks;
    }

    /** A mark as it is written, without zeros that say nothing: "0.5", "20", "−10". */
    public static String text(double mark) {
        return mark == 0 ? "0" : DecimalFormatter.stripped(FigureFormat.rounded(mark, 3));
    }
}
