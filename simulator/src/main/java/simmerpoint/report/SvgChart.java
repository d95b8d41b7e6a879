package simmerpoint.report;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.answer.words.LevelWords;
import simmerpoint.drawing.chart.Ticks;
import simmerpoint.heat.HeatLevel;

/** A rectangle of a drawing in which figures are plotted upwards from 0. */
final class SvgChart {
    /** Left edge of every chart, units: room for the figures beside it. */
    static final double LEFT = 34;

    /** Right edge where nothing stands beside the chart. */
    static final double RIGHT = SvgSheet.WIDTH - 10;

    private static final double UNITS_PER_MARK = 34;
    private static final double LETTER = 0.58 * SvgSheet.LETTERS;
    private static final double SWATCH = 10;

    private final SvgSheet sheet;
    private final double right;
    private final double top;
    private final double bottom;
    private final double first;
    private final double last;
    private final double most;

    /**
     * A chart.
     *
     * @param sheet to draw on
     * @param right edge, units
     * @param top edge, units
     * @param height units
     * @param first figure at the left edge
     * @param last figure at the right edge
     * @param most figure at the upper edge
     */
    SvgChart(SvgSheet sheet, double right, double top, double height, double first, double last, double most) {
        this.sheet = sheet;
        this.right = right;
        this.top = top;
        this.bottom = top + height;
        this.first = first;
        this.last = last;
        this.most = most;
    }

    double x(double figure) {
        return LEFT + (figure - first) / (last - first) * (right - LEFT);
    }

    /** Kept within the chart. */
    double y(double figure) {
        return bottom - Math.max(0, Math.min(1, figure / most)) * (bottom - top);
    }

    /** A figure without zeros that say nothing. */
    static String text(double figure) {
        String text = FigureFormat.rounded(figure, 3);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }

    /** Grid lines and figures on the left; the name of the chart above it. */
    void upright(String name) {
        sheet.text("heading", "start", LEFT, top - 8, 0, name);
        for (double mark : Ticks.upTo(most, (int) Math.max(2, (bottom - top) / UNITS_PER_MARK))) {
            sheet.line("grid", LEFT, y(mark), right, y(mark));
            sheet.text("end", LEFT - 5, y(mark) + 4, text(mark));
        }
    }

    /** Figures of a second scale on the right, its upper edge at {@code top2}. */
    void right(String name, double top2) {
        sheet.text("second", "end", SvgSheet.WIDTH - 2, top - 8, 0, name);
        for (double mark : Ticks.upTo(top2, (int) Math.max(2, (bottom - top) / UNITS_PER_MARK))) {
            double y = y(mark / top2 * most);
            sheet.line("tick", right, y, right + 4, y);
            sheet.text("second", "start", right + 6, y + 4, 0, text(mark));
        }
    }

    /** A mark below the chart with its name. */
    void below(double figure, String name) {
        sheet.line("tick", x(figure), bottom, x(figure), bottom + 4);
        double half = LETTER * name.length() / 2;
        sheet.text("middle", Math.min(SvgSheet.WIDTH - half, x(figure)), bottom + 16, name);
    }

    void frame() {
        sheet.path(
                "frame",
                SvgSheet.way(
                        List.of(
                                new double[] {LEFT, top},
                                new double[] {right, top},
                                new double[] {right, bottom},
                                new double[] {LEFT, bottom}),
                        true));
    }

    /** A stretch of one heat level, with its name where there is room. */
    void stretch(HeatLevel level, double from, double to) {
        sheet.rectangle(style(level), x(from), top, x(to) - x(from), bottom - top);
        String name = LevelWords.of(level);
        if (x(to) - x(from) > LETTER * name.length()) {
            sheet.text(
                    level.compareTo(HeatLevel.BOIL) < 0 ? "dark" : "pale",
                    "middle",
                    (x(from) + x(to)) / 2,
                    top + 14,
                    0,
                    name);
        }
    }

    static String style(HeatLevel level) {
        return "level" + number(level);
    }

    /** The area between two curves of one run of points, each x, low, high. */
    void area(String style, List<double[]> run) {
        List<double[]> way = new ArrayList<>();
        run.forEach(p -> way.add(new double[] {x(p[0]), y(p[1])}));
        for (int k = run.size() - 1; k >= 0; k--) {
            way.add(new double[] {x(run.get(k)[0]), y(run.get(k)[2])});
        }
        sheet.path(style, SvgSheet.way(way, true));
    }

    /** A curve through points, each x, y, with a light seam so that it shows on every level. */
    void curve(String style, List<double[]> points) {
        String way = SvgSheet.way(
                points.stream().map(p -> new double[] {x(p[0]), y(p[1])}).toList(), false);
        sheet.path("seam", way);
        sheet.path(style, way);
    }

    /** A curve on the page's own ground. */
    void line(List<double[]> points) {
        sheet.path(
                "plain",
                SvgSheet.way(
                        points.stream()
                                .map(p -> new double[] {x(p[0]), y(p[1])})
                                .toList(),
                        false));
    }

    /** The names of all levels with their colours, in one line. */
    static void levels(SvgSheet sheet, double y) {
        double x = 4;
        for (HeatLevel level : HeatLevel.values()) {
            String name = LevelWords.of(level);
            sheet.rectangle("swatch " + style(level), x, y - SWATCH + 1, SWATCH, SWATCH);
            sheet.text("start", x + SWATCH + 4, y, name);
            x += SWATCH + 14 + LETTER * name.length();
        }
    }

    /** Heat levels from the coolest, 0, up. */
    static int number(HeatLevel level) {
        return List.of(HeatLevel.values()).indexOf(level);
    }
}
