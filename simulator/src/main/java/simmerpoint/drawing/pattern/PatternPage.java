package simmerpoint.drawing.pattern;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Path;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;
import simmerpoint.geometry.Point;
import simmerpoint.workshop.Piece;

/**
 * One page of a pattern at full size.
 *
 * @param piece what is cut
 * @param grid how it is spread over pages
 * @param column which page, from the left
 * @param row which page, from the top
 * @param unit metres of a unit
 * @param heading stands at its foot
 */
record PatternPage(Piece piece, PageGrid grid, int column, int row, double unit, String heading) implements Drawing {
    @Override
    public double height(double width, TextMetrics metrics) {
        return grid.page().height() / unit + PatternFoot.HEIGHT;
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        Box shown = new Box(
                box.x(), box.y(), grid.page().width() / unit, grid.page().height() / unit);
        canvas.clip(shown, () -> pattern(canvas, shown));
        joins(canvas, shown);
        new PatternFoot(heading, PageGrid.name(column, row), unit)
                .draw(canvas, new Box(box.x(), shown.bottom(), shown.width(), PatternFoot.HEIGHT));
    }

    private void pattern(Canvas canvas, Box shown) {
        List<double[]> corners = new ArrayList<>();
        piece.outline().corners().forEach(p -> corners.add(onPage(p, shown)));
        canvas.draw(Style.CUT, Path.through(corners, true));
        for (Piece.Mark mark : piece.marks()) {
            double[] from = onPage(mark.from(), shown);
            double[] to = onPage(mark.to(), shown);
            canvas.line(Style.PATTERN_MARK, from[0], from[1], to[0], to[1]);
            canvas.write(words(mark, from, to));
        }
    }

    /** Beyond the end of the mark's line: below it, or to its left where it runs to the left. */
    private static Text words(Piece.Mark mark, double[] from, double[] to) {
        boolean level = Math.abs(to[0] - from[0]) > Math.abs(to[1] - from[1]);
        Text words = level
                ? Text.at(to[0] - 5, to[1] + 4, mark.words()).end()
                : Text.at(to[0], to[1] + 14, mark.words()).middle();
        return words.in(TextStyle.NOTE);
    }

    /** From metres upwards to units on this page downwards. */
    private double[] onPage(Point p, Box shown) {
        double height = piece.outline().height();
        double x = grid.turned() ? p.y() : p.x();
        double down = grid.turned() ? p.x() : height - p.y();
        return new double[] {
            shown.x() + (x - column * grid.stepAcross()) / unit, shown.y() + (down - row * grid.stepDown()) / unit
        };
    }

    /** Where to cut this page off, and where its neighbours' edges lie. */
    private void joins(Canvas canvas, Box shown) {
        if (column > 0) {
            canvas.line(Style.TRIM, shown.x(), shown.y(), shown.x(), shown.bottom());
        }
        if (row > 0) {
            canvas.line(Style.TRIM, shown.x(), shown.y(), shown.right(), shown.y());
        }
        if (column < grid.columns() - 1) {
            double x = shown.x() + grid.stepAcross() / unit;
            canvas.line(Style.JOIN, x, shown.y(), x, shown.bottom());
            register(canvas, x, shown.middleY());
            canvas.write(Text.at(x + 4, shown.middleY() - 12, PageGrid.name(column + 1, row))
                    .in(TextStyle.SOFT));
        }
        if (row < grid.rows() - 1) {
            double y = shown.y() + grid.stepDown() / unit;
            canvas.line(Style.JOIN, shown.x(), y, shown.right(), y);
            register(canvas, shown.middleX(), y);
            canvas.write(Text.at(shown.middleX() + 12, y + 14, PageGrid.name(column, row + 1))
                    .in(TextStyle.SOFT));
        }
        if (column > 0) {
            register(canvas, shown.x(), shown.middleY());
        }
        if (row > 0) {
            register(canvas, shown.middleX(), shown.y());
        }
    }

    private static void register(Canvas canvas, double x, double y) {
        double arm = 10;
        canvas.line(Style.TRIM, x - arm, y, x + arm, y);
        canvas.line(Style.TRIM, x, y - arm, x, y + arm);
    }
}
