package simmerpoint.viewer.pan;

import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/** Names of the heat levels on their bands: beside the mark of the pan's place, with a rim that keeps curves and edges off. */
final class BandNames {
    /** How far the mark with its knob reaches to both sides, px. */
    private static final double MARK = 8;

    private static final double UPRIGHT = 14;
    private static final double BESIDE = 3;

    private final GraphicsContext g;
    private final double top;
    private final double height;
    private final double mark;
    private final double[] flag;

    /**
     * Names inside a drawing.
     *
     * @param g where they are painted
     * @param top of the bands, px
     * @param height of the bands, px
     * @param mark where the pan stands, px
     * @param flag left and right side and upper edge of a flag, px; empty without one
     */
    BandNames(GraphicsContext g, double top, double height, double mark, double... flag) {
        this.g = g;
        this.top = top;
        this.height = height;
        this.mark = mark;
        this.flag = flag;
    }

    /** Paints a name on the band from one x to another: across, or along a narrow band; none where there is no room. */
    void paint(String word, double from, double to, Color ground, Color ink) {
        double[] free = clear(from, to, top + 18);
        double room = free[1] - free[0];
        for (double size : new double[] {11.5, 10}) {
            double wide = Pen.width(word, Pen.bold(size)) + 2 * BESIDE;
            if (wide <= room) {
                write(word, near((from + to) / 2, free, wide / 2), top + 14, TextAlignment.CENTER, size, ground, ink);
                return;
            }
        }
        free = clear(from, to, top + 8 + Pen.width(word, Pen.bold(11)));
        room = free[1] - free[0];
        if (room >= UPRIGHT && height >= Pen.width(word, Pen.bold(11)) + 8) {
            g.save();
            g.translate(near((from + to) / 2, free, UPRIGHT / 2), top + 5);
            g.rotate(-90);
            write(word, 0, 4, TextAlignment.RIGHT, 11, ground, ink);
            g.restore();
        }
    }

    /** What mark and flag leave of a band for words that end at {@code foot}. */
    private double[] clear(double from, double to, double foot) {
        double[] free = free(from, to, mark - MARK, mark + MARK);
        return flag.length == 0 || foot < flag[2] ? free : free(free[0], free[1], flag[0], flag[1]);
    }

    /** The larger part of a stretch that something from {@code left} to {@code right} leaves. */
    static double[] free(double from, double to, double left, double right) {
        if (right <= from || left >= to) {
            return new double[] {from, to};
        }
        return left - from >= to - right ? new double[] {from, left} : new double[] {right, to};
    }

    private static double near(double wanted, double[] free, double half) {
        return Math.max(free[0] + half, Math.min(free[1] - half, wanted));
    }

    private void write(String word, double x, double y, TextAlignment alignment, double size, Color ground, Color ink) {
        Font font = Pen.bold(size);
        g.setFont(font);
        g.setTextAlign(alignment);
        g.setTextBaseline(javafx.geometry.VPos.BASELINE);
        g.setStroke(ground);
        g.setLineWidth(3.5);
        g.strokeText(word, x, y);
        g.setLineWidth(1);
        g.setFill(ink);
        g.fillText(word, x, y);
    }
}
