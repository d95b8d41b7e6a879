package simmerpoint.report;

import java.util.ArrayList;
import java.util.List;

/** Round steps of 1, 2 or 5 times a power of ten, for scales. */
final class NiceSteps {
    private NiceSteps() {}

    /** The largest round number that is not above {@code x}, which is above 0. */
    static double below(double x) {
        double power = Math.pow(10, Math.floor(Math.log10(x)));
        double mantissa = x / power * (1 + 1e-9);
        return (mantissa >= 5 ? 5 : mantissa >= 2 ? 2 : 1) * power;
    }

    /** Marks from 0 to {@code top}, about {@code wanted} of them; just 0 if the top is 0. */
    static List<Double> upTo(double top, int wanted) {
        List<Double> marks = new ArrayList<>();
        if (!(top > 0)) {
            marks.add(0.0);
            return marks;
        }
        double step = below(top / wanted);
        for (int k = 0; k * step <= top * (1 + 1e-9); k++) {
            marks.add(k * step);
        }
        return marks;
    }
}
