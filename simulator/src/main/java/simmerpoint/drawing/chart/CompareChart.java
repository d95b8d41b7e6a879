package simmerpoint.drawing.chart;

import java.util.List;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Circle;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;
import simmerpoint.quantities.VariantNames;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.compare.ComparedRow;
import simmerpoint.study.compare.Comparison;
import simmerpoint.units.UnitSystem;

/**
 * Compared cookers: a row for each, its watts as a bar from 0, and beside it on a finer scale what it lies below the best. Whiskers
 * reach two standard errors to both sides: one that reaches 0 at the right belongs to a cooker that is not seen to differ.
 */
public final class CompareChart implements Drawing {
    private static final double HEAD = 46;
    private static final double LEAST_NAMES = 0.12;
    private static final double MOST_NAMES = 0.424;
    private static final double BARS_END = 0.557;
    private static final double GAPS = 0.681;
    private static final double GAPS_WIDTH = 0.19;
    private static final double BESIDE = 10;

    private final Comparison comparison;
    private final List<ComparedRow> rows;
    private final VariantNames names;
    private final String where;
    private final FigureFormat figures;

    /** The best {@code most} cookers; {@code where} says of which watts, after that word. */
    public CompareChart(Comparison comparison, int most, String where, UnitSystem units) {
        this.comparison = comparison;
        this.where = where;
        rows = comparison.rows().subList(0, Math.min(most, comparison.rows().size()));
        names = new VariantNames(comparison.variants());
        figures = new FigureFormat(units);
    }

    private double pitch() {
        return rows.size() <= 8 ? 33 : rows.size() <= 24 ? 24 : 18;
    }

    private double letters() {
        return rows.size() <= 24 ? 12 : 11;
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        return HEAD + rows.size() * pitch() + 8;
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        double widest = rows.stream()
                .mapToDouble(row -> canvas.metrics().width(names.name(row.variant()), letters(), true))
                .max()
                .orElse(0);
        double width = box.width();
        double wide = Math.max(LEAST_NAMES * width, Math.min(MOST_NAMES * width, widest));
        double left = box.x() + wide + BESIDE;
        double height = rows.size() * pitch();
        Box bars = new Box(left, box.y() + HEAD, box.x() + BARS_END * width - left, height);
        Box gaps = new Box(box.x() + GAPS * width, bars.y(), GAPS_WIDTH * width, height);
        Plot watts =
                Plot.of(canvas, bars, 0, 1.04 * Math.max(1e-3, reach(rows.get(0).useful(), 1)), 1);
        Plot below = below(canvas, gaps);
        heading(canvas, "Watts " + where, bars, gaps.x() - bars.x() - 28);
        heading(canvas, "Below the best, W", gaps, box.right() - gaps.x());
        watts.above();
        below.above();
        for (int k = 0; k < rows.size(); k++) {
            double middle = bars.y() + (k + 0.5) * pitch();
            name(canvas, rows.get(k), box.x(), left - BESIDE, middle);
            watts(watts, rows.get(k), middle, gaps.x() - bars.right() - 12);
            below(below, rows.get(k), middle, box.right() - gaps.right() - BESIDE);
        }
    }

    private static void heading(Canvas canvas, String words, Box box, double room) {
        canvas.write(Text.at(box.x(), box.y() - 28, words)
                .in(TextStyle.HEADING)
                .size(13)
                .within(room));
    }

    private Plot below(Canvas canvas, Box box) {
        double low = 0;
        double high = 0;
        for (ComparedRow row : rows) {
            low = Math.min(low, reach(row.difference().times(-1), -1));
            high = Math.max(high, reach(row.difference().times(-1), 1));
        }
        double room = high > low ? high - low : 1;
        return Plot.of(canvas, box, low - 0.03 * room, high + 0.05 * room + (high > low ? 0 : 1), 1);
    }

    /** The end of a whisker. */
    private static double reach(Estimate e, int side) {
        return e.value() + side * ComparedRow.SEEN_ERRORS * e.standardError();
    }

    private void name(Canvas canvas, ComparedRow row, double left, double right, double middle) {
        canvas.write(text(right, middle, names.name(row.variant()))
                .in(row.isSeenToDiffer() ? TextStyle.LABEL : TextStyle.HEADING)
                .end()
                .within(right - left));
    }

    private Text text(double x, double middle, String words) {
        return Text.at(x, middle + 0.36 * letters(), words).size(letters());
    }

    private void watts(Plot plot, ComparedRow row, double middle, double room) {
        double end = plot.x().within(row.useful().value());
        double high = 0.68 * pitch();
        Box bar = new Box(plot.box().x(), middle - high / 2, end - plot.box().x(), high);
        plot.canvas().draw(row.isSeenToDiffer() ? Style.WORSE : Style.LIKE_BEST, bar);
        plot.whisker(row.useful(), ComparedRow.SEEN_ERRORS, middle, 0.18 * pitch());
        plot.canvas()
                .write(text(plot.box().right() + 6, middle, figures.plainWatts(row.useful()))
                        .within(room));
    }

    private void below(Plot plot, ComparedRow row, double middle, double room) {
        boolean best = row.place() == comparison.best().place();
        boolean same = !row.isSeenToDiffer();
        Estimate below = row.difference().times(-1);
        if (!best) {
            plot.whisker(below, ComparedRow.SEEN_ERRORS, middle, 0.18 * pitch());
            plot.canvas()
                    .draw(
                            same ? Style.LIKE_BEST_DOT : Style.WORSE_DOT,
                            new Circle(plot.x().within(below.value()), middle, 3.6));
        }
        String words = best ? "best" : same ? "no difference seen" : figures.plainWatts(below);
        plot.canvas().write(text(plot.box().right() + BESIDE, middle, words).within(room));
    }
}
