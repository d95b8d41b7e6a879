package simmerpoint.drawing.chart;

import simmerpoint.answer.words.MoveWords;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextStyle;
import simmerpoint.study.pan.MoveStudy;
import simmerpoint.units.UnitSystem;

/**
 * What stands around the curves of a move: scales, their names with samples of the curves, lengths below.
 *
 * @param move along which
 * @param low least length shown, m
 * @param high largest
 * @param origin length at the offset 0 of the curves
 * @param present length at which the pan stands
 * @param fromFocus whether lengths count from the focus; else from where the pan stands
 * @param units of lengths
 */
record MoveAxis(
        MoveStudy.Move move,
        double low,
        double high,
        double origin,
        double present,
        boolean fromFocus,
        UnitSystem units) {
    /** Room above the curves, units. */
    static final double HEAD = 21;

    /** Room below. */
    static final double FOOT = 37;

    private static final double SAMPLE = 22;
    private static final double OUT = 50;
    private static final double GAP = 5;
    private static final double SECOND_LINE = 32;

    /** Both scales and their names. */
    void heads(Plot plot, Box whole, MoveCurve curve) {
        Canvas canvas = plot.canvas();
        plot.left();
        plot.right(curve.mostFlux() / 1000);
        double y = plot.box().y() - 7;
        double left = Math.max(whole.x() + 2, plot.box().x() - OUT);
        double right = Math.min(whole.right() - 2, plot.box().right() + OUT);
        canvas.line(Style.WATTS_SAMPLE, left, y - 4, left + SAMPLE, y - 4);
        Text watts = Text.at(left + SAMPLE + GAP, y, "W into water").in(TextStyle.HEADING);
        canvas.write(watts);
        double from = watts.x() + canvas.metrics().width(watts) + SAMPLE + 3 * GAP;
        Text flux = canvas.metrics()
                .fitted(Text.at(right, y, "hottest spot, kW/m\u00b2")
                        .in(TextStyle.FLUX_HEADING)
                        .end()
                        .within(right - from));
        canvas.write(flux);
        double end = right - canvas.metrics().width(flux) - GAP;
        canvas.line(Style.FLUX_SAMPLE, end - SAMPLE, y - 4, end, y - 4);
    }

    /** Marks below, and what the two ways mean. */
    void lengths(Plot plot, Box whole) {
        double unit = units.shortUnitMetres();
        for (double mark : plot.columns(low / unit, high / unit)) {
            plot.below(mark * unit, Ticks.text(mark));
        }
        Canvas canvas = plot.canvas();
        double left = whole.x() + 4;
        double right = whole.right() - 4;
        double y = plot.box().bottom() + SECOND_LINE;
        double half = whole.width() / 2 - 16;
        Text in = canvas.metrics()
                .fitted(Text.at(left, y, "\u2190 " + MoveWords.negative(move))
                        .in(TextStyle.SOFT)
                        .within(half));
        Text out = canvas.metrics()
                .fitted(Text.at(right, y, MoveWords.positive(move) + " \u2192")
                        .in(TextStyle.SOFT)
                        .end()
                        .within(half));
        canvas.write(in);
        canvas.write(out);
        double from = left + canvas.metrics().width(in) + 6;
        double to = right - canvas.metrics().width(out) - 6;
        name(plot, from, to, y);
    }

    private void name(Plot plot, double from, double to, double y) {
        String name = units.shortUnit();
        String all = fromFocus ? "pull-back, " + name : name + " from where the pan stands";
        Text text = Text.at(0, y, all).in(TextStyle.SOFT).middle();
        Text fits = plot.canvas().metrics().width(text) > to - from ? text.words(name) : text;
        double half = plot.canvas().metrics().width(fits) / 2;
        double middle = Math.max(from + half, Math.min(to - half, plot.box().middleX()));
        plot.canvas().write(fits.moved(middle, y));
    }
}
