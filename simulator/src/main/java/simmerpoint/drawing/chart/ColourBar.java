package simmerpoint.drawing.chart;

import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.FluxColours;
import simmerpoint.drawing.Raster;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;

/**
 * An upright scale of the colours of maps, from 0.
 *
 * @param top figure of the last colour
 * @param unit stands above it
 */
public record ColourBar(double top, String unit) implements Drawing {
    /** Width with its figures, units. */
    public static final double WIDTH = 58;

    private static final double BAR = 16;
    private static final double TICK = 4;
    private static final double UNITS_PER_MARK = 26;

    private static final Raster COLOURS = colours();

    private static Raster colours() {
        int[] argb = new int[FluxColours.STEPS];
        for (int k = 0; k < argb.length; k++) {
            argb[argb.length - 1 - k] = FluxColours.argb((k + 0.5) / argb.length);
        }
        return Raster.cells(1, argb.length, argb);
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        return width;
    }

    /** Fills the box from top to bottom; the unit stands above it. */
    @Override
    public void draw(Canvas canvas, Box box) {
        Box bar = new Box(box.x(), box.y(), BAR, box.height());
        canvas.image(COLOURS, bar);
        canvas.draw(Style.FRAME, bar);
        canvas.write(Text.at(box.x(), box.y() - 5, unit).in(TextStyle.HEADING).within(box.width()));
        Scale scale = new Scale(0, top, bar.bottom(), bar.y());
        int wanted = (int) Math.max(2, Math.min(8, box.height() / UNITS_PER_MARK));
        for (double mark : Ticks.upTo(top, wanted)) {
            double y = scale.at(mark);
            canvas.line(Style.TICK, bar.right(), y, bar.right() + TICK, y);
            canvas.write(Text.at(bar.right() + TICK + 4, Math.max(y + 4, bar.y() + 8), Ticks.text(mark))
                    .within(box.right() - bar.right() - TICK - 4));
        }
    }
}
