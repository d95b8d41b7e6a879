package simmerpoint.report;

import java.awt.Graphics2D;
import java.awt.Rectangle;
import simmerpoint.answer.TargetWords;
import simmerpoint.target.FluxMap;

/** Which way each part of the unrolled wall faces. */
final class WallMarks {
    private final Graphics2D g;
    private final Brush brush;
    private final FluxMap wall;
    private final String[] names;
    private final double radius;

    WallMarks(Graphics2D g, Brush brush, FluxMap wall, TargetWords words, double radius) {
        this.g = g;
        this.brush = brush;
        this.wall = wall;
        this.names = new String[] {words.towardsPlusX(), "right", words.towardsMinusX(), "left"};
        this.radius = radius;
    }

    /** Marks and names under {@code box}; a name that would run into its neighbour gets less room, not more. */
    void paint(Rectangle box) {
        double length = wall.columns() * wall.cellWidth();
        double quarter = Math.PI / 2 * radius;
        double room = quarter / length * box.width * 0.95;
        int k = (int) Math.ceil(wall.firstMin() / quarter - 1e-6);
        for (; k * quarter <= wall.firstMin() + length * (1 + 1e-6); k++) {
            double share = (k * quarter - wall.firstMin()) / length;
            double x = box.x + share * box.width;
            g.setColor(Brush.INK);
            g.drawLine((int) x, box.y + box.height, (int) x, box.y + box.height + 7);
            String name = names[Math.floorMod(k, 4)];
            name(name, x, share, box, room);
        }
    }

    private void name(String name, double x, double share, Rectangle box, double room) {
        double y = box.y + box.height + 26.0;
        if (share < 0.02) {
            brush.line(name, Brush.font(16), 11, box.x, y, room / 2);
        } else if (share > 0.98) {
            brush.lineTo(name, Brush.font(16), 11, box.x + (double) box.width, y, room / 2);
        } else {
            brush.centred(name, Brush.font(16), x, y, room);
        }
    }
}
