package simmerpoint.drawing.pattern;

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
import simmerpoint.units.SawLength;
import simmerpoint.units.UnitSystem;

/**
 * What is to be cut, how often, and how its pages lie.
 *
 * @param sets pieces with their pages, as many as go on one page
 * @param units for lengths
 */
record PatternIndex(List<PatternSet> sets, UnitSystem units) implements Drawing {
    private static final double ROW = 112;
    private static final double MAP = 150;

    @Override
    public double height(double width, TextMetrics metrics) {
        return sets.size() * ROW;
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        for (int k = 0; k < sets.size(); k++) {
            row(canvas, sets.get(k), new Box(box.x(), box.y() + k * ROW, box.width(), ROW));
        }
    }

    /** Rows on a page of that height. */
    static int rows(double height) {
        return Math.max(1, (int) (height / ROW));
    }

    private void row(Canvas canvas, PatternSet set, Box box) {
        map(canvas, set, new Box(box.x(), box.y() + 6, MAP, ROW - 14));
        double x = box.x() + MAP + 16;
        double room = box.right() - x;
        canvas.write(Text.at(
                        x,
                        box.y() + 22,
                        set.piece().count() + " \u00d7 " + set.piece().name())
                .in(TextStyle.HEADING)
                .within(room));
        double width = set.piece().outline().width();
        double height = set.piece().outline().height();
        canvas.write(
                Text.at(x, box.y() + 40, SawLength.text(width, height, units)).within(room));
        int pages = set.grid().pages();
        String where =
                set.isSmall() ? "shares a page" : pages == 1 ? "one page" : pages + " pages: " + columns(set.grid());
        canvas.write(Text.at(x, box.y() + 58, where).within(room));
    }

    private static String columns(PageGrid grid) {
        return grid.columns() + " across, " + grid.rows() + " down";
    }

    /** The piece as small as the box, with the pages over it. */
    private void map(Canvas canvas, PatternSet set, Box box) {
        PageGrid grid = set.grid();
        double across = (grid.columns() - 1) * grid.stepAcross() + grid.page().width();
        double down = (grid.rows() - 1) * grid.stepDown() + grid.page().height();
        double scale = Math.min(box.width() / across, box.height() / down);
        double tall = set.piece().outline().height();
        List<double[]> corners = set.piece().outline().corners().stream()
                .map(p -> onMap(p, grid.turned(), tall, scale, box))
                .toList();
        canvas.draw(Style.PIECE, Path.through(corners, true));
        for (int column = 0; !set.isSmall() && column < grid.columns(); column++) {
            for (int row = 0; row < grid.rows(); row++) {
                Box page = new Box(
                        box.x() + scale * column * grid.stepAcross(),
                        box.y() + scale * row * grid.stepDown(),
                        scale * grid.page().width(),
                        scale * grid.page().height());
                canvas.draw(Style.JOIN, page);
                canvas.write(Text.at(page.middleX(), page.middleY() + 4, PageGrid.name(column, row))
                        .in(TextStyle.SOFT)
                        .middle());
            }
        }
    }

    private static double[] onMap(Point p, boolean turned, double tall, double scale, Box box) {
        double x = turned ? p.y() : p.x();
        double down = turned ? p.x() : tall - p.y();
        return new double[] {box.x() + scale * x, box.y() + scale * down};
    }
}
