package simmerpoint.drawing.chart;

import java.util.Optional;
import simmerpoint.answer.budget.FlawWords;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;
import simmerpoint.sampling.Estimate;
import simmerpoint.study.budget.BudgetResult;
import simmerpoint.study.budget.Flaw;
import simmerpoint.study.budget.FlawCost;
import simmerpoint.units.UnitSystem;

/**
 * What the flaws of a cooker cost: a row for each with what it costs in two senses. Where there is width, a stair from the perfect cooker
 * to the built one stands beside; else both are bars above.
 */
public final class BudgetChart implements Drawing {
    private static final double WIDE = 640;
    private static final double ROW = 37;
    private static final double NAMES = 0.204;
    private static final double STAIR = 0.333;
    private static final double BETWEEN = 42;
    private static final double HEAD = 46;

    private static final double NARROW_ROW = 44;
    private static final double WHOLE_ROW = 34;
    private static final double THICK = 11;
    private static final double HEADING = 40;

    private final BudgetResult result;
    private final FigureFormat figures;
    private final FlawWords words;
    private final BudgetBars bars;

    /** Of a result, sizes of flaws in those units. */
    public BudgetChart(BudgetResult result, UnitSystem units) {
        this.result = result;
        figures = new FigureFormat(units);
        words = new FlawWords(result.scenario(), figures);
        bars = new BudgetBars(result, figures);
    }

    /** Flaws and what is left over. */
    private int pairs() {
        return result.costs().size() + 1;
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        double legend = BudgetBars.legend().height(width, metrics);
        return width < WIDE
                ? 2 * WHOLE_ROW + HEADING + NARROW_ROW * pairs() + 8 + legend
                : HEAD + ROW * (pairs() + 2) + 44 + legend;
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        if (box.width() < WIDE) {
            narrow(canvas, box);
        } else {
            wide(canvas, box);
        }
    }

    private String name(int pair) {
        return pair < result.costs().size()
                ? words.sized(result.costs().get(pair).flaw())
                : "acting together";
    }

    private void wide(Canvas canvas, Box box) {
        double height = ROW * (pairs() + 2);
        double left = box.x() + NAMES * box.width();
        Box stair = new Box(left, box.y() + HEAD, STAIR * box.width(), height);
        double right = stair.right() + BETWEEN;
        Box pairs = new Box(right, stair.y(), box.right() - right, height);
        name(canvas, box, stair, 0, "perfect", TextStyle.HEADING);
        for (int k = 0; k < pairs(); k++) {
            flaw(canvas, box, stair, k);
        }
        name(canvas, box, stair, pairs() + 1, "as built", TextStyle.HEADING);
        new BudgetStair(result, figures).draw(canvas, stair, ROW);
        Plot plot = bars.plot(canvas, pairs);
        title(plot, "What each costs, W");
        plot.above();
        for (int k = 0; k < pairs(); k++) {
            bars.pair(plot, k, pairs.y() + (k + 1) * ROW + 5, 12.5);
        }
        double y = stair.bottom() + 18;
        canvas.write(Text.at(
                        box.x(),
                        y,
                        "Left: blue, what the flaw costs the built cooker, the dearest first; grey, what the flaws do together.")
                .in(TextStyle.SOFT)
                .within(box.width()));
        canvas.write(Text.at(
                        box.x(),
                        y + 17,
                        "Right: whiskers of two standard errors; where none is seen they are thinner than a line.")
                .in(TextStyle.SOFT)
                .within(box.width()));
        BudgetBars.legend().draw(canvas, new Box(box.x(), y + 24, box.width(), 0));
    }

    /** The name of a plot and of its axis above. */
    static void title(Plot plot, String title) {
        plot.canvas()
                .write(Text.at(plot.box().x(), plot.box().y() - 28, title)
                        .in(TextStyle.HEADING)
                        .size(14));
    }

    /** A flaw's name, its zone in a line of its own. */
    private void flaw(Canvas canvas, Box box, Box rows, int pair) {
        Optional<Flaw> flaw =
                result.costs().stream().skip(pair).map(FlawCost::flaw).findFirst();
        Optional<String> zone = flaw.flatMap(words::zone);
        if (zone.isEmpty()) {
            name(canvas, box, rows, pair + 1, name(pair), TextStyle.LABEL);
            return;
        }
        name(canvas, box, rows, pair + 0.8, words.sizedAlone(flaw.orElseThrow()), TextStyle.LABEL);
        name(canvas, box, rows, pair + 1.19, zone.get(), TextStyle.SOFT);
    }

    private static void name(Canvas canvas, Box box, Box rows, double row, String name, TextStyle style) {
        canvas.write(Text.at(rows.x() - 10, rows.y() + (row + 0.5) * ROW + 4, name)
                .in(style)
                .size(13)
                .end()
                .within(rows.x() - 10 - box.x()));
    }

    private void narrow(Canvas canvas, Box box) {
        Plot plot = bars.plot(canvas, box);
        double most = Math.max(1e-9, result.perfect().value());
        Scale whole = new Scale(0, most, box.x() + 4, plot.box().right());
        whole(canvas, whole, box.y(), "perfect", result.perfect());
        whole(canvas, whole, box.y() + WHOLE_ROW, "as built", result.built());
        double top = box.y() + 2 * WHOLE_ROW + HEADING;
        canvas.write(Text.at(box.x() + 4, top - 14, "What each flaw costs").in(TextStyle.HEADING));
        double zero = plot.x().at(0);
        for (int k = 0; k < pairs(); k++) {
            double y = top + k * NARROW_ROW;
            bars.pair(plot, k, y + 17, THICK);
            Text name = Text.at(0, 0, name(k)).within(box.width());
            double x = Math.min(zero + 3, box.right() - canvas.metrics().width(name));
            canvas.write(name.moved(Math.max(box.x(), x), y + 13));
        }
        double foot = top + pairs() * NARROW_ROW;
        canvas.line(Style.ZERO, zero, top, zero, foot);
        BudgetBars.legend().draw(canvas, new Box(box.x() + 4, foot + 4, box.width() - 4, 0));
    }

    private void whole(Canvas canvas, Scale scale, double y, String name, Estimate watts) {
        double end = scale.within(watts.value());
        canvas.write(Text.at(scale.from(), y + 12, name));
        canvas.draw(Style.WHOLE, new Box(scale.from(), y + 17, end - scale.from(), THICK));
        canvas.write(Text.at(end + 6, y + 27, figures.plainWatts(watts)));
    }
}
