package simmerpoint.drawing.pattern;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import simmerpoint.answer.cut.CheckWords;
import simmerpoint.answer.cut.ToleranceWords;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;
import simmerpoint.study.build.DepthTolerance;
import simmerpoint.units.SawLength;
import simmerpoint.units.UnitSystem;
import simmerpoint.workshop.BuildCheck;

/**
 * To take to the finished dish: what to measure, what it should be, and room to write.
 *
 * @param check what to measure
 * @param tolerance how far off it may be at a distance from the middle
 * @param units for lengths
 */
record CheckTable(BuildCheck check, DoubleFunction<Optional<DepthTolerance>> tolerance, UnitSystem units)
        implements Drawing {
    private static final double ROW = 30;
    private static final double NAME = 215;
    private static final double WANTED = 80;
    private static final double WITHIN = 125;
    private static final int ROOMS = 4;

    /** A row of the page. */
    private record Row(String name, double metres, String within) {}

    @Override
    public double height(double width, TextMetrics metrics) {
        return 16 + (rows().size() + 1) * ROW;
    }

    private List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        check.across()
                .forEach(across -> rows.add(new Row(
                        across.pairs().isEmpty()
                                ? "across the rim, from a rib\u2019s tip"
                                : "across, tip to tip of ribs "
                                        + (across.rib().isEmpty() ? pair(across) : across.rib()),
                        across.metres(),
                        "")));
        check.betweenTips()
                .forEach(between -> rows.add(new Row(
                        between.first().isEmpty()
                                ? "from one rib\u2019s tip to the next"
                                : "from a tip to the next, " + CheckWords.letters(between),
                        between.metres(),
                        "")));
        for (BuildCheck.Depth depth : check.acrossLongest() ? check.depths() : List.<BuildCheck.Depth>of()) {
            String at = SawLength.text(depth.radius(), units);
            rows.add(new Row(
                    depth.radius() == 0 ? "depth in the middle" : "depth " + at + " from the middle",
                    depth.depth(),
                    tolerance
                            .apply(depth.radius())
                            .map(t -> ToleranceWords.of(t, units))
                            .orElse("")));
        }
        return rows;
    }

    private static String pair(BuildCheck.Across across) {
        return across.pairs().get(0).get(0) + " and " + across.pairs().get(0).get(1);
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        double y = box.y() + 12;
        head(canvas, box, y);
        for (Row row : rows()) {
            y += ROW;
            canvas.line(Style.GRID, box.x(), y - ROW + 8, box.right(), y - ROW + 8);
            canvas.write(Text.at(box.x(), y, row.name()).within(NAME - 8));
            canvas.write(Text.at(box.x() + NAME, y, SawLength.text(row.metres(), units)));
            canvas.write(Text.at(box.x() + NAME + WANTED, y, row.within()));
            rooms(canvas, box, y);
        }
    }

    private static void head(Canvas canvas, Box box, double y) {
        canvas.write(Text.at(box.x() + NAME, y, "should be").in(TextStyle.SOFT));
        canvas.write(Text.at(box.x() + NAME + WANTED, y, "within").in(TextStyle.SOFT));
        double wide = (box.width() - NAME - WANTED - WITHIN) / ROOMS;
        for (int k = 0; k < ROOMS; k++) {
            canvas.write(Text.at(box.x() + NAME + WANTED + WITHIN + k * wide, y, "line " + (k + 1))
                    .in(TextStyle.SOFT));
        }
    }

    private static void rooms(Canvas canvas, Box box, double y) {
        double wide = (box.width() - NAME - WANTED - WITHIN) / ROOMS;
        for (int k = 0; k < ROOMS; k++) {
            double x = box.x() + NAME + WANTED + WITHIN + k * wide;
            canvas.line(Style.TICK, x, y + 2, x + wide - 10, y + 2);
        }
    }
}
