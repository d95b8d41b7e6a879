package simmerpoint.drawing.pattern;

import java.util.List;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;
import simmerpoint.units.SawLength;
import simmerpoint.units.UnitSystem;
import simmerpoint.workshop.BuildCheck;

/**
 * Room to write the depths of every rib: a line for each, a column for each distance from the middle.
 *
 * @param depths as planned
 * @param ribs those of this page
 * @param units for lengths
 */
record RibDepths(List<BuildCheck.Depth> depths, List<Rib> ribs, UnitSystem units) implements Drawing {
    /** A rib may be measured that far beyond its planned end, m. */
    private static final double NEAR = 1e-3;

    private static final double ROW = 24;
    private static final double NAME = 110;
    private static final double HEAD = 36;

    /**
     * A rib.
     *
     * @param number from 1
     * @param end where it ends, m from the axis
     */
    record Rib(int number, double end) {}

    /** Ribs that have room on a page of that height, units. */
    static int rows(double height) {
        return Math.max(1, (int) ((height - HEAD) / ROW));
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        return HEAD + ribs.size() * ROW;
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        double wide = (box.width() - NAME) / depths.size();
        canvas.write(Text.at(box.x(), box.y() + 12, "from the middle").in(TextStyle.SOFT));
        canvas.write(Text.at(box.x(), box.y() + 28, "planned depth"));
        for (int k = 0; k < depths.size(); k++) {
            double x = box.x() + NAME + k * wide;
            canvas.write(Text.at(x, box.y() + 12, SawLength.text(depths.get(k).radius(), units))
                    .in(TextStyle.SOFT));
            canvas.write(Text.at(x, box.y() + 28, SawLength.text(depths.get(k).depth(), units)));
        }
        for (int row = 0; row < ribs.size(); row++) {
            Rib rib = ribs.get(row);
            double y = box.y() + HEAD + (row + 1) * ROW - 4;
            canvas.write(Text.at(box.x(), y, "rib " + rib.number()));
            for (int k = 0; k < depths.size() && depths.get(k).radius() < rib.end() + NEAR; k++) {
                double x = box.x() + NAME + k * wide;
                canvas.line(Style.TICK, x, y + 2, x + wide - 12, y + 2);
            }
        }
    }
}
