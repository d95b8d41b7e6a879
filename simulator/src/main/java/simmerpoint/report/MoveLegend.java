package simmerpoint.report;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import simmerpoint.answer.LevelWords;
import simmerpoint.heat.HeatLevel;

/** What lines and bands of the picture of the moves mean. */
final class MoveLegend {
    private static final int SAMPLE = 46;

    private final Graphics2D g;
    private final Brush brush;

    MoveLegend(Graphics2D g) {
        this.g = g;
        this.brush = new Brush(g);
    }

    void paint(int x, int y, int room) {
        int step = room / 5;
        line(x, y, MovePanel.WATTS, false, "watts taken up (left)");
        line(x + step, y, MovePanel.FLUX, true, "hottest spot, kW/m\u00b2 (right)");
        mark(x + 2 * step + 26, y, false, "where the pan stands");
        mark(x + 3 * step + 6, y, true, "recommended for a simmer");
        range(x + 4 * step + 4, y);
        int k = 0;
        for (HeatLevel level : HeatLevel.values()) {
            band(x + k * room / HeatLevel.values().length, y + 32, level);
            k++;
        }
    }

    private void line(int x, int y, Color colour, boolean dashed, String text) {
        g.setColor(colour);
        g.setStroke(dashed ? MovePanel.DASHED : MovePanel.SOLID);
        g.draw(new Line2D.Double(x, y - 6, x + SAMPLE - 8.0, y - 6));
        g.setStroke(new java.awt.BasicStroke(1));
        g.setColor(Brush.INK);
        brush.line(text, Brush.font(17), 11, x + SAMPLE, y, 238);
    }

    private void mark(int x, int y, boolean recommended, String text) {
        g.setColor(Brush.INK);
        if (recommended) {
            g.fill(MovePanel.diamond(x + 16, y - 6));
        } else {
            g.fill(MovePanel.triangle(x + 16, y + 1));
        }
        brush.line(text, Brush.font(17), 11, x + 34, y, 226);
    }

    private void range(int x, int y) {
        g.setColor(Brush.GREY);
        g.setStroke(MovePanel.BAR);
        g.draw(new Line2D.Double(x, y - 6, x + SAMPLE - 10.0, y - 6));
        g.setStroke(new java.awt.BasicStroke(1));
        g.setColor(Brush.INK);
        brush.line("four in five pans change here", Brush.font(17), 11, x + SAMPLE, y, 222);
    }

    private void band(int x, int y, HeatLevel level) {
        g.setColor(LevelColours.of(level));
        g.fillRect(x, y - 17, SAMPLE - 8, 22);
        g.setColor(Brush.GREY);
        g.drawRect(x, y - 17, SAMPLE - 8, 22);
        g.setColor(Brush.INK);
        brush.line(LevelWords.of(level), Brush.font(17), 11, x + SAMPLE, y, 200);
    }
}
