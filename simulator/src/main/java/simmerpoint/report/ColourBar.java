package simmerpoint.report;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import simmerpoint.answer.Figures;
import simmerpoint.drawing.FluxColours;
import simmerpoint.drawing.chart.Ticks;

/** The scale of colours in kW/m². */
final class ColourBar {
    private static final int MARKS = 8;

    private final Graphics2D g;
    private final double top;

    /** For a scale that ends at {@code top} W/m². */
    ColourBar(Graphics2D g, double top) {
        this.g = g;
        this.top = top;
    }

    void paint(Rectangle box) {
        g.setColor(Brush.GREY);
        g.drawRect(box.x - 1, box.y - 1, box.width + 1, box.height + 1);
        for (int k = 0; k < box.height; k++) {
            g.setColor(new java.awt.Color(FluxColours.rgb((k + 0.5) / box.height)));
            g.fillRect(box.x, box.y + box.height - 1 - k, box.width, 1);
        }
        g.setColor(Brush.INK);
        Brush brush = new Brush(g);
        brush.line("kW/m\u00b2", Brush.bold(18), 14, box.x, box.y - 14, 110);
        for (double mark : Ticks.upTo(top / 1000, MARKS)) {
            double y = box.y + box.height - mark * 1000 / top * box.height;
            g.drawLine(box.x + box.width, (int) y, box.x + box.width + 7, (int) y);
            brush.line(text(mark), Brush.font(17), 10, box.x + box.width + 12, y + 6, 80);
        }
    }

    private static String text(double mark) {
        String text = Figures.rounded(mark, 3);
        return text.contains(".") ? text.replaceAll("0+$", "").replaceAll("\\.$", "") : text;
    }
}
