package simmerpoint.viewer.pan;

import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/**
 * The names of the bands behind curves: across a band, or along a narrow one, where no curve runs through them. Where there is
 * no such place a name keeps a rim of its band's colour around it.
 */
final class BandNames {
    private static final double UPRIGHT = 13;
    private static final double LETTERS = 11.5;
    private static final double EDGE = 5;
    private static final double RIM = 4;

    /** Between the middle of the mark and a word, px. */
    private static final double MARK = 8;

    private final Pen pen;
    private final CurveFrame frame;
    private final double mark;
    private final List<Obstacle> obstacles;

    /** Something that words should not stand on. */
    interface Obstacle {
        /** Whether it reaches into a box, px. */
        boolean crosses(double left, double top, double right, double bottom);

        /** A mark around a place, px. */
        static Obstacle mark(double x, double y, double radius) {
            return (left, top, right, bottom) ->
                    x + radius > left && x - radius < right && y + radius > top && y - radius < bottom;
        }
    }

    /**
     * A curve as it is drawn.
     *
     * @param xs px, ascending
     * @param ys px
     */
    record Curve(double[] xs, double[] ys) implements Obstacle {
        @Override
        public boolean crosses(double left, double top, double right, double bottom) {
            double highest = Math.min(at(left), at(right));
            double lowest = Math.max(at(left), at(right));
            for (int k = 0; k < xs.length; k++) {
                if (xs[k] > left && xs[k] < right) {
                    highest = Math.min(highest, ys[k]);
                    lowest = Math.max(lowest, ys[k]);
                }
            }
            return lowest + RIM > top && highest - RIM < bottom;
        }

        private double at(double x) {
            int k = 1;
            while (k < xs.length - 1 && xs[k] < x) {
                k++;
            }
            double share = Math.max(0, Math.min(1, (x - xs[k - 1]) / (xs[k] - xs[k - 1])));
            return ys[k - 1] + share * (ys[k] - ys[k - 1]);
        }
    }

    /** {@code mark} is where an upright line marks the pan's place, px. */
    BandNames(Pen pen, CurveFrame frame, double mark, List<Obstacle> obstacles) {
        this.pen = pen;
        this.frame = frame;
        this.mark = mark;
        this.obstacles = obstacles;
    }

    /** Writes a name into the band between two places, px; none into a band narrower than a letter is high. */
    void write(String word, double from, double to, Color ground, Color letters) {
        double room = to - from;
        Font font = Pen.bold(LETTERS);
        double wide = Pen.width(word, font);
        if (wide + EDGE < room || Pen.width(word, Pen.bold(LETTERS - 1.5)) + 6 < room) {
            across(word, from, to, Math.min(wide, room - EDGE), ground, letters);
        } else if (room > UPRIGHT && frame.height() > UPRIGHT + wide) {
            along(word, (from + to) / 2, wide, ground, letters);
        }
    }

    private void across(String word, double from, double to, double wide, Color ground, Color letters) {
        double at = beside(from, to, wide / 2 + MARK);
        double top = place(at - wide / 2, at + wide / 2, LETTERS + 3);
        written(word, at, top + LETTERS, TextAlignment.CENTER, to - from - EDGE, ground, letters);
    }

    private void along(String word, double middle, double wide, Color ground, Color letters) {
        double top = place(middle - UPRIGHT / 2, middle + UPRIGHT / 2, wide);
        GraphicsContext g = pen.g();
        g.save();
        g.translate(middle, top);
        g.rotate(-90);
        written(word, 0, 4, TextAlignment.RIGHT, frame.height(), ground, letters);
        g.restore();
    }

    private void written(
            String word, double x, double y, TextAlignment where, double room, Color ground, Color letters) {
        pen.rimmed(word, x, y, where, Pen.bold(LETTERS), room, ground, letters);
    }

    /** Beside the mark of the pan's place, if that would stand in the word and there is room beside it. */
    private double beside(double from, double to, double half) {
        double middle = (from + to) / 2;
        if (Math.abs(mark - middle) >= half || Math.max(mark - from, to - mark) < 2 * half) {
            return middle;
        }
        return mark >= middle ? mark - half : mark + half;
    }

    /** The top of a box as high as that: at the upper end if no curve runs there, else at the lower, else anywhere free. */
    double place(double left, double right, double high) {
        double first = frame.top() + EDGE;
        double last = frame.top() + frame.height() - EDGE - high;
        if (isFree(left, first, right, high)) {
            return first;
        }
        for (double top = last; top > first; top -= 2) {
            if (isFree(left, top, right, high)) {
                return top;
            }
        }
        return first;
    }

    private boolean isFree(double left, double top, double right, double high) {
        return obstacles.stream().noneMatch(thing -> thing.crosses(left, top, right, top + high));
    }
}
