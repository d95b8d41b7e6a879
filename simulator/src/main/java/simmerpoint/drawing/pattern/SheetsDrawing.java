package simmerpoint.drawing.pattern;

import java.util.List;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Path;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.units.SawLength;
import simmerpoint.units.UnitSystem;
import simmerpoint.workshop.SheetLayout;
import simmerpoint.workshop.SheetLayout.Placed;

/**
 * Pieces on their sheets, small: sheets lie across, side by side as many as fit.
 *
 * @param layout what lies where
 * @param units for the size of a sheet
 */
public record SheetsDrawing(SheetLayout layout, UnitSystem units) implements Drawing {
    private static final int MOST = 12;
    private static final double GAP = 14;
    private static final double WORDS = 18;
    private static final int ACROSS = 3;

    private int shown() {
        return Math.min(MOST, layout.sheets().size());
    }

    private int across() {
        return Math.max(1, Math.min(ACROSS, shown()));
    }

    private double scale(double width) {
        return (width - (across() - 1) * GAP) / across() / layout.sheet().length();
    }

    private double rowHeight(double width) {
        return scale(width) * layout.sheet().width() + WORDS + GAP;
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        return Math.ceil((double) shown() / across()) * rowHeight(width);
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        double scale = scale(box.width());
        double wide = scale * layout.sheet().length();
        for (int k = 0; k < shown(); k++) {
            double x = box.x() + k % across() * (wide + GAP);
            int row = k / across();
            double y = box.y() + row * rowHeight(box.width());
            sheet(
                    canvas,
                    layout.sheets().get(k).placed(),
                    scale,
                    new Box(x, y, wide, scale * layout.sheet().width()));
            String size = SawLength.text(layout.sheet().length(), layout.sheet().width(), units);
            String more = k == shown() - 1 && shown() < layout.sheets().size()
                    ? " and " + (layout.sheets().size() - shown()) + " more"
                    : "";
            canvas.write(Text.at(x, y + scale * layout.sheet().width() + 14, k + 1 + ": " + size + more)
                    .within(wide));
        }
    }

    /** Its length runs to the right, its width down. */
    private static void sheet(Canvas canvas, List<Placed> placed, double scale, Box box) {
        canvas.draw(Style.FRAME, box);
        for (Placed each : placed) {
            List<double[]> corners = each.outline().corners().stream()
                    .map(p -> new double[] {box.x() + scale * p.y(), box.y() + scale * p.x()})
                    .toList();
            canvas.draw(Style.PIECE, Path.through(corners, true));
        }
    }
}
