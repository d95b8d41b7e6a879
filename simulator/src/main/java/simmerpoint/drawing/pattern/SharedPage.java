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
import simmerpoint.geometry.Polygon;
import simmerpoint.workshop.Piece;

/**
 * Several small pieces at full size on one page, in rows, each with its name below.
 *
 * @param spots where each lies
 * @param height of the page without its foot, units
 * @param unit metres of a unit
 * @param heading stands at its foot
 */
record SharedPage(List<Spot> spots, double height, double unit, String heading) implements Drawing {
    private static final double LABEL = 18;
    private static final double GAP = 16;

    /** Room for a name below a narrow piece, units. */
    private static final double NAME = 130;

    /**
     * A piece on the page.
     *
     * @param piece what is cut
     * @param outline lying so that it fits the page, m
     * @param x of its left edge, units
     * @param y of its upper edge, units
     */
    record Spot(Piece piece, Polygon outline, double x, double y) {}

    /** The pieces in order, in rows as wide as the page and on as many pages as that takes. */
    static List<SharedPage> of(List<PatternSet> sets, PageGrid.Page page, double unit, String heading) {
        Rows rows = new Rows(page, unit, heading);
        sets.forEach(rows::add);
        rows.endPage();
        return rows.pages;
    }

    /** Fills pages row by row. */
    private static final class Rows {
        private final PageGrid.Page page;
        private final double unit;
        private final String heading;
        private final List<SharedPage> pages = new ArrayList<>();
        private final List<Spot> spots = new ArrayList<>();
        private double x;
        private double y;
        private double rowHeight;

        Rows(PageGrid.Page page, double unit, String heading) {
            this.page = page;
            this.unit = unit;
            this.heading = heading;
        }

        void add(PatternSet set) {
            Polygon outline = set.grid().turned()
                    ? set.piece().outline().turned(-Math.PI / 2).atOrigin()
                    : set.piece().outline().atOrigin();
            double wide = Math.max(outline.width() / unit, NAME);
            double high = outline.height() / unit + LABEL;
            if (x > 0 && x + wide > page.width() / unit) {
                endRow();
            }
            if (y > 0 && y + high > page.height() / unit) {
                endPage();
            }
            spots.add(new Spot(set.piece(), outline, x, y));
            x += wide + GAP;
            rowHeight = Math.max(rowHeight, high);
        }

        private void endRow() {
            x = 0;
            y += rowHeight + GAP;
            rowHeight = 0;
        }

        void endPage() {
            if (!spots.isEmpty()) {
                pages.add(new SharedPage(List.copyOf(spots), page.height() / unit, unit, heading));
            }
            spots.clear();
            endRow();
            y = 0;
        }
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        return height + PatternFoot.HEIGHT;
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        for (Spot spot : spots) {
            double tall = spot.outline().height();
            List<double[]> corners = spot.outline().corners().stream()
                    .map(p ->
                            new double[] {box.x() + spot.x() + p.x() / unit, box.y() + spot.y() + (tall - p.y()) / unit
                            })
                    .toList();
            canvas.draw(Style.CUT, Path.through(corners, true));
            canvas.write(Text.at(
                            box.x() + spot.x(),
                            box.y() + spot.y() + tall / unit + LABEL - 4,
                            PatternSet.label(spot.piece()))
                    .in(TextStyle.NOTE));
        }
        new PatternFoot(heading, "", unit)
                .draw(canvas, new Box(box.x(), box.y() + height, box.width(), PatternFoot.HEIGHT));
    }
}
