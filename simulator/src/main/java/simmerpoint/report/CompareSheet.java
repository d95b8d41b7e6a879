package simmerpoint.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import simmerpoint.answer.compare.CompareAnswer;
import simmerpoint.answer.compare.CompareWords;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.drawing.chart.Ticks;
import simmerpoint.quantities.CompareQuantities;
import simmerpoint.quantities.VariantNames;
import simmerpoint.quantities.Version;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.compare.ComparedRow;
import simmerpoint.study.compare.Comparison;
import simmerpoint.units.UnitSystem;

/**
 * How the picture of a comparison is laid out: a row for each cooker, its watts as a bar from 0, and beside it on a finer scale
 * what it lies below the best. Whiskers reach two standard errors to both sides: one that reaches 0 in the right panel
 * belongs to a cooker that is not seen to differ.
 */
final class CompareSheet {
    static final int WIDTH = 1400;

    /** More rows are left to the table. */
    static final int MOST_ROWS = 64;

    private static final int MARGIN = 40;
    private static final int INNER = WIDTH - 2 * MARGIN;
    private static final int LEAST_NAMES = 160;
    private static final int MOST_NAMES = 560;
    private static final int BARS_END = 776;
    private static final int GAPS = 940;
    private static final int GAPS_WIDTH = 250;
    private static final int TOP = 250;
    private static final int BELOW = 150;
    private static final Color LIKE_BEST = new Color(0x1F4E8C);
    private static final Color WORSE = new Color(0x9DB8DA);
    private static final Color GRID = new Color(0xD0D3D8);

    private final Comparison comparison;
    private final List<ComparedRow> rows;
    private final VariantNames names;
    private final CompareWords words;
    private final FigureFormat figures;
    private final UnitSystem system;
    private final int pitch;
    private final int bars;

    CompareSheet(Comparison comparison, UnitSystem system) {
        this.comparison = comparison;
        this.system = system;
        rows = comparison
                .rows()
                .subList(0, Math.min(MOST_ROWS, comparison.rows().size()));
        names = new VariantNames(comparison.variants());
        words = new CompareWords(comparison);
        figures = new FigureFormat(system);
        pitch = rows.size() <= 8 ? 46 : rows.size() <= 24 ? 34 : 25;
        bars = MARGIN + 14 + Math.max(LEAST_NAMES, Math.min(MOST_NAMES, widestName()));
    }

    int height() {
        return TOP + rows.size() * pitch + BELOW;
    }

    private int widestName() {
        FontMetrics metrics = Sheets.metrics(Brush.bold(fontSize()));
        return rows.stream()
                .mapToInt(row -> metrics.stringWidth(names.name(row.variant())) + 2)
                .max()
                .orElse(0);
    }

    private int fontSize() {
        return pitch >= 34 ? 17 : 15;
    }

    void paint(Graphics2D g) {
        Brush brush = new Brush(g);
        heading(g, brush);
        double most = Math.max(1e-3, reach(rows.get(0).absorbed(), 1));
        double low = 0;
        double high = 0;
        for (ComparedRow row : rows) {
            low = Math.min(low, reach(row.difference().times(-1), -1));
            high = Math.max(high, reach(row.difference().times(-1), 1));
        }
        Scale watts = new Scale(bars, BARS_END - bars, 0, 1.04 * most);
        double room = high > low ? high - low : 1;
        Scale gaps = new Scale(GAPS, GAPS_WIDTH, low - 0.03 * room, high + 0.05 * room + (high > low ? 0 : 1));
        axis(g, brush, watts);
        axis(g, brush, gaps);
        for (int k = 0; k < rows.size(); k++) {
            row(g, brush, rows.get(k), k, watts, gaps);
        }
        caption(g, brush);
    }

    /** The end of a whisker. */
    private static double reach(Estimate e, int side) {
        return e.value() + side * ComparedRow.SEEN_ERRORS * e.standardError();
    }

    private void heading(Graphics2D g, Brush brush) {
        String title = CompareQuantities.title(comparison);
        g.setColor(Brush.INK);
        brush.line(title.isEmpty() ? "Cookers compared" : title, Brush.bold(30), 13, MARGIN, 52, INNER);
        List<String> lines = brush.wrapped(CompareAnswer.first(comparison, system), Brush.font(20), INNER);
        for (int k = 0; k < Math.min(3, lines.size()); k++) {
            String more = k == 2 && lines.size() > 3 ? " \u2026" : "";
            brush.line(lines.get(k) + more, Brush.font(20), 12, MARGIN, 88 + 27.0 * k, INNER);
        }
        brush.line("Watts " + words.where(), Brush.bold(19), 12, bars, TOP - 46.0, GAPS - bars - 40.0);
        brush.line("Below the best, W", Brush.bold(19), 12, GAPS, TOP - 46.0, WIDTH - MARGIN - GAPS);
    }

    private void axis(Graphics2D g, Brush brush, Scale scale) {
        double bottom = TOP + rows.size() * pitch;
        for (double mark : Ticks.upTo(scale.high, Math.max(2, (int) (scale.width / 120)))) {
            double x = scale.x(mark);
            g.setColor(mark == 0 ? Brush.GREY : GRID);
            g.draw(new Line2D.Double(x, TOP, x, bottom));
            g.setColor(Brush.INK);
            brush.centred(mark(mark, scale), Brush.font(16), x, TOP - 12.0, 70);
        }
    }

    private static String mark(double mark, Scale scale) {
        double step = Ticks.below(scale.high / Math.max(2, (int) (scale.width / 120)));
        int decimals = (int) Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
        return FigureFormat.fixed(mark, decimals);
    }

    private void row(Graphics2D g, Brush brush, ComparedRow row, int k, Scale watts, Scale gaps) {
        double top = TOP + k * (double) pitch;
        double middle = top + pitch / 2.0;
        double base = middle + fontSize() * 0.36;
        boolean same = !row.isSeenToDiffer();
        g.setColor(Brush.INK);
        brush.lineTo(
                names.name(row.variant()),
                same ? Brush.bold(fontSize()) : Brush.font(fontSize()),
                11,
                bars - 14.0,
                base,
                bars - 14.0 - MARGIN);
        g.setColor(same ? LIKE_BEST : WORSE);
        double end = watts.x(row.absorbed().value());
        g.fill(new Rectangle2D.Double(bars, top + pitch * 0.16, end - bars, pitch * 0.68));
        whisker(g, watts, row.absorbed(), middle);
        brush.line(figures.watts(row.absorbed()), Brush.font(fontSize()), 11, BARS_END + 8.0, base, 148);
        if (row.place() == comparison.best().place()) {
            brush.line("best", Brush.font(fontSize()), 11, GAPS + GAPS_WIDTH + 14.0, base, 156);
            return;
        }
        Estimate below = row.difference().times(-1);
        whisker(g, gaps, below, middle);
        g.setColor(same ? LIKE_BEST : WORSE);
        double x = gaps.x(below.value());
        g.fill(new Ellipse2D.Double(x - 5, middle - 5, 10, 10));
        g.setColor(Brush.INK);
        g.draw(new Ellipse2D.Double(x - 5, middle - 5, 10, 10));
        String text = same ? "no difference seen" : figures.watts(below);
        brush.line(text, Brush.font(fontSize()), 11, GAPS + GAPS_WIDTH + 14.0, base, 156);
    }

    private void whisker(Graphics2D g, Scale scale, Estimate e, double y) {
        double from = scale.x(reach(e, -1));
        double to = scale.x(reach(e, 1));
        double cap = pitch * 0.18;
        g.setColor(Brush.INK);
        g.setStroke(new BasicStroke(1.6f));
        g.draw(new Line2D.Double(from, y, to, y));
        g.draw(new Line2D.Double(from, y - cap, from, y + cap));
        g.draw(new Line2D.Double(to, y - cap, to, y + cap));
        g.setStroke(new BasicStroke(1));
    }

    private void caption(Graphics2D g, Brush brush) {
        double y = TOP + rows.size() * pitch + 42.0;
        g.setColor(Brush.GREY);
        String left = rows.size() < comparison.rows().size()
                ? " The best " + rows.size() + " of " + comparison.rows().size() + "."
                : "";
        y = brush.paragraph(
                "Whiskers: two standard errors to both sides. Dark and bold: no difference is seen to the best."
                        + left + " Same samples for all, "
                        + FigureFormat.count(comparison.run().rays())
                        + " rays each, seed " + comparison.seed() + ". An estimate. Simmerpoint " + Version.text(),
                Brush.font(17),
                MARGIN,
                y,
                INNER);
        brush.line(
                "Focused sunlight blinds and burns: keep eyes, face and hands out of the beam, and cover the mirror when it is "
                        + "not in use.",
                Brush.font(17),
                12,
                MARGIN,
                y,
                INNER);
        g.setColor(Brush.INK);
    }

    /** Watts along a line of pixels. */
    private record Scale(double left, double width, double low, double high) {
        double x(double watts) {
            return left + width * Math.max(0, Math.min(1, (watts - low) / (high - low)));
        }
    }
}
