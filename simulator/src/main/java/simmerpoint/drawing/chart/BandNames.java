package simmerpoint.drawing.chart;

import java.util.Map;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextStyle;
import simmerpoint.heat.HeatLevel;

/**
 * Names of the heat levels on their bands, beside what is marked there.
 *
 * @param canvas to draw on
 * @param box of all bands
 * @param marks what they must leave free
 */
record BandNames(Canvas canvas, Box box, Box... marks) {
    private static final double LINE = 14;
    private static final double BESIDE = 3;
    private static final double[] SIZES = {12, 11};

    /** Where there is no room for the whole name. */
    private static final Map<HeatLevel, String> SHORT =
            Map.of(HeatLevel.KEEP_WARM, "warm", HeatLevel.FAST_BOIL, "fast", HeatLevel.TOO_COOL, "cool");

    /** Writes a name on the band from one x to another: across, or along a narrow band; none where there is no room. */
    void write(HeatLevel level, double from, double to) {
        write(level, from, to, false);
    }

    /** The same on a low band, which has no room for names along it: a short name where the whole has no room. */
    void writeLow(HeatLevel level, double from, double to) {
        write(level, from, to, true);
    }

    private void write(HeatLevel level, double from, double to, boolean low) {
        double left = Math.max(box.x(), from);
        double right = Math.min(box.right(), to);
        Text name = Text.at(0, 0, LevelWords.of(level)).in(TextStyle.on(level));
        double[] free = free(left, right, box.y() + LINE + 4);
        if (across(name, left, right, free)) {
            return;
        }
        if (low) {
            across(name.words(SHORT.getOrDefault(level, name.words())), left, right, free);
        } else {
            upright(name.size(11), left, right);
        }
    }

    private boolean across(Text name, double left, double right, double[] free) {
        for (double size : SIZES) {
            double wide = canvas.metrics().width(name.size(size)) + 2 * BESIDE;
            if (wide <= free[1] - free[0]) {
                double middle = near((left + right) / 2, free, wide / 2);
                canvas.write(name.size(size).moved(middle, box.y() + LINE).middle());
                return true;
            }
        }
        return false;
    }

    private void upright(Text name, double left, double right) {
        double wide = canvas.metrics().width(name);
        double[] free = free(left, right, box.y() + wide + 8);
        if (free[1] - free[0] >= LINE && box.height() >= wide + 8) {
            double x = near((left + right) / 2, free, LINE / 2);
            canvas.write(name.moved(x + 4, box.y() + 5).end().turned(-90));
        }
    }

    /** The largest part of a band that the marks leave for words that end at {@code foot}. */
    private double[] free(double from, double to, double foot) {
        double[] free = {from, to};
        for (Box mark : marks) {
            if (foot >= mark.y()) {
                free = free(free[0], free[1], mark.x(), mark.right());
            }
        }
        return free;
    }

    /** The larger part of a stretch that something from {@code left} to {@code right} leaves. */
    static double[] free(double from, double to, double left, double right) {
        if (right <= from || left >= to) {
            return new double[] {from, to};
        }
        return left - from >= to - right ? new double[] {from, left} : new double[] {right, to};
    }

    private static double near(double wanted, double[] free, double half) {
        return Math.max(free[0] + half, Math.min(free[1] - half, wanted));
    }
}
