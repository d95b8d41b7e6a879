package simmerpoint.report;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import simmerpoint.drawing.FluxColours;
import simmerpoint.drawing.chart.Ticks;

/** A scale of colours in watts or any other plain unit, from 0. */
final class WattBar {
    private static final int MARKS = 8;

    private final Graphics2D g;
    private final double top;

    WattBar(Graphics2D g, double top) {
        this.g = g;
        this.top = top;
    }

    void paint(Rectangle box, String unit) {
        g.setColor(Brush.GREY);
        g.drawRect(box.x - 1, box.y - 1, box.width + 1, box.height + 1);
        for (int k = 0; k < box.height; k++) {
            g.setColor(new java.awt.Color(FluxColours.rgb((k + 0.5) / box.height)));
            g.fillRect(box.x, box.y + box.height - 1 - k, box.width, 1);
        }
        g.setColor(Brush.INK);
        Brush brush = new Brush(g);
        brush.line(unit, Brush.bold(18), 14, box.x, box.y - 14.0, 110);
        for (double mark : Ticks.upTo(top, MARKS)) {
            double y = box.getMaxY() - mark / top * box.height;
            g.drawLine(box.x + box.width, (int) y, box.x + box.width + 7, (int) y);
            brush.line(LinePlot.text(mark), Brush.font(17), 10, box.x + box.width + 12.0, y + 6, 80);
        }
    }
}
