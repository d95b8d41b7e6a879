package simmerpoint.drawing.chart;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.answer.Figures;

/** Round marks of scales: steps of 1, 2 or 5 times a power of ten. */
public final class Ticks {
    private static final double TINY = 1e-9;

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
        List<Double> marks = new ArrayList<>();
        double step = below((high - low) / wanted);
        double most = high + TINY * Math.max(Math.abs(high), step);
        for (long k = (long) Math.ceil(low / step - TINY); k * step <= most; k++) {
            marks.add(k * step);
        }
        return marks;
    }

    /** A mark as it is written, without zeros that say nothing: "0.5", "20", "−10". */
    public static String text(double mark) {
        String text = mark == 0 ? "0" : Figures.rounded(mark, 3);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }
}
