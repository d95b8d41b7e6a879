package simmerpoint.drawing.cooker;

import simmerpoint.answer.words.FigureFormat;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Path;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextStyle;
import simmerpoint.drawing.chart.Ticks;
import simmerpoint.units.UnitSystem;

/**
 * Lines of lengths with what they measure.
 *
 * @param canvas to draw on
 * @param box words keep within it from left to right
 */
record Dimensions(Canvas canvas, Box box) {
    private static final double TICK = 4;
    private static final double GAP = 6;

    /** From a thing to the line of its length. */
    void extension(double x1, double y1, double x2, double y2) {
        canvas.line(Style.EXTENSION, x1, y1, x2, y2);
    }

    /** A level length, its words below. */
    void across(double x1, double x2, double y, String length) {
        canvas.line(Style.DIMENSION, x1, y, x2, y);
        tick(x1, y);
        tick(x2, y);
        Text text = Text.at(0, 0, length).in(TextStyle.NOTE).middle();
        double half = canvas.metrics().width(text) / 2;
        double middle = Math.max(box.x() + half, Math.min(box.right() - half, (x1 + x2) / 2));
        canvas.write(text.moved(middle, y + Text.SIZE + 2));
    }

    /** An upright length, its words on one side if there is room, else along it. */
    void upright(double x, double y1, double y2, String length, boolean toTheRight) {
        canvas.line(Style.DIMENSION, x, y1, x, y2);
        tick(x, y1);
        tick(x, y2);
        double middle = (y1 + y2) / 2;
        Text text = Text.at(x - TICK, middle, length).in(TextStyle.NOTE);
        double wide = canvas.metrics().width(text) + GAP;
        if (toTheRight && x + wide <= box.right()) {
            canvas.write(text.moved(x + GAP, middle + 4));
        } else if (!toTheRight && x - wide >= box.x()) {
            canvas.write(text.moved(x - GAP, middle + 4).end());
        } else {
            canvas.write(text.middle().turned(-90));
        }
    }

    private void tick(double x, double y) {
        canvas.line(Style.DIMENSION, x - TICK, y + TICK, x + TICK, y - TICK);
    }

    /** A bar of a round length up to {@code most} units, with its words from {@code x} on, or up to it if {@code ends}. */
    void scaleBar(double x, double y, double perMetre, double most, boolean ends, UnitSystem units) {
        double unit = units.shortUnitMetres();
        double count = Ticks.below(most / perMetre / unit);
        double wide = count * unit * perMetre;
        String name = FigureFormat.rounded(count, 1) + FigureFormat.NBSP + units.shortUnit();
        Text words = Text.at(0, 0, name).in(TextStyle.NOTE);
        double left = ends ? x - wide - GAP - canvas.metrics().width(words) : x;
        canvas.draw(Style.SCALE_BAR, new Box(left, y - 3, wide, 3));
        canvas.draw(Style.DIMENSION, Path.open(left, y - 7, left, y, left + wide, y, left + wide, y - 7));
        canvas.write(words.moved(left + wide + GAP, y + 1));
    }
}
