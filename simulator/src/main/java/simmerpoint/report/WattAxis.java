package simmerpoint.report;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import simmerpoint.answer.Figures;
import simmerpoint.drawing.chart.Ticks;

/** A level scale of watts with its grid, for bars that lie. */
final class WattAxis {
    private static final Color GRID = new Color(0xD0D3D8);
    private static final int PIXELS_PER_MARK = 86;

    private final Graphics2D g;
    private final Rectangle box;
    private final double low;
    private final double high;

    /** From {@code low}, at most 0, to {@code high}, above 0, W. */
    WattAxis(Graphics2D g, Rectangle box, double low, double high) {
        this.g = g;
        this.box = box;
        this.low = low;
        this.high = high;
    }

    double x(double watts) {
        return box.x + box.width * (watts - low) / (high - low);
    }

    /** Grid, marks and what is shown. */
    void paint(String title) {
        Brush brush = new Brush(g);
        g.setColor(Brush.INK);
        brush.line(title, Brush.bold(19), 12, box.x, box.y - 44, box.width);
        double step = Ticks.below((high - low) / Math.max(2, box.width / PIXELS_PER_MARK));
        List<Double> marks = new ArrayList<>();
        for (long k = (long) Math.ceil(low / step - 1e-9); k * step <= high * (1 + 1e-9); k++) {
            marks.add(k * step);
        }
        int decimals = step < 1 ? (int) Math.ceil(-Math.log10(step) - 1e-9) : 0;
        for (double mark : marks) {
            int at = (int) Math.round(x(mark));
            g.setColor(mark == 0 ? Brush.GREY : GRID);
            g.drawLine(at, box.y, at, box.y + box.height);
            g.setColor(Brush.INK);
            brush.centred(Figures.fixed(mark, decimals), Brush.font(16), at, box.y - 14, PIXELS_PER_MARK);
        }
    }
}
