package simmerpoint.drawing.map;

import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Raster;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextStyle;
import simmerpoint.drawing.chart.Ticks;

/** The scale of the colours, upright, from 0. */
public final class ColourBar {
    /** Room for bar and figures from the edge of a map to the right, units. */
    public static final double ROOM = 58;

    private static final double GAP = 10;
    private static final double WIDE = 14;
    private static final double TICK = 4;
    private static final double FIGURES = 27;
    private static final double SIZE = 11;
    private static final int MARKS = 8;
    private static final double UNITS_PER_MARK = 24;
    private static final Raster COLOURS = colours();

    private ColourBar() {}

    private static Raster colours() {
        int[] argb = new int[FluxColours.STEPS];
        for (int k = 0; k < argb.length; k++) {
            argb[argb.length - 1 - k] = FluxColours.argb((k + 0.5) / argb.length);
        }
        return Raster.cells(1, argb.length, argb);
    }

    /** Draws it to the right of a map; {@code top} is the figure at its upper end. */
    public static void draw(Canvas canvas, Box map, double top, String unit) {
        Box bar = new Box(map.right() + GAP, map.y(), WIDE, map.height());
        canvas.image(COLOURS, bar);
        canvas.draw(Style.FRAME, bar);
        canvas.write(Text.at(bar.x(), bar.y() - 5, unit)
                .in(TextStyle.HEADING)
                .size(SIZE)
                .within(ROOM - 6));
        int wanted = (int) Math.max(2, Math.min(MARKS, bar.height() / UNITS_PER_MARK));
        for (double mark : Ticks.upTo(top, wanted)) {
            double y = bar.bottom() - mark / top * bar.height();
            canvas.line(Style.TICK, bar.right(), y, bar.right() + TICK, y);
            canvas.write(Text.at(bar.right() + TICK + 3, Math.max(bar.y() + 8, y + 4), Ticks.text(mark))
                    .size(SIZE)
                    .within(FIGURES));
        }
    }
}
