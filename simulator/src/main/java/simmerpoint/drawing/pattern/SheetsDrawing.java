package simmerpoint.drawing.pattern;

import java.util.List;
import java.util.Optional;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Path;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.units.SawLength;
import simmerpoint.units.UnitSystem;
import simmerpoint.workshop.Piece;
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

    private Box place(int k, Box box) {
        double scale = scale(box.width());
        double wide = scale * layout.sheet().length();
        double x = box.x() + k % across() * (wide + GAP);
        int row = k / across();
        double y = box.y() + row * rowHeight(box.width());
        return new Box(x, y, wide, scale * layout.sheet().width());
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        for (int k = 0; k < shown(); k++) {
            Box sheet = place(k, box);
            sheet(canvas, layout.sheets().get(k).placed(), scale(box.width()), sheet);
            String size = SawLength.text(layout.sheet().length(), layout.sheet().width(), units);
            String more = k == shown() - 1 && shown() < layout.sheets().size()
                    ? " and " + (layout.sheets().size() - shown()) + " more"
                    : "";
            canvas.write(Text.at(sheet.x(), sheet.bottom() + 14, k + 1 + ": " + size + more)
                    .within(sheet.width()));
        }
    }

    /** The piece at a point of a drawing in that box. */
    public Optional<Piece> at(Box box, double x, double y) {
        for (int k = 0; k < shown(); k++) {
            Box sheet = place(k, box);
            double along = (x - sheet.x()) / scale(box.width());
            double down = (y - sheet.y()) / scale(box.width());
            for (Placed each : layout.sheets().get(k).placed()) {
                if (each.outline().contains(down, along)) {
                    return Optional.of(each.piece());
                }
            }
        }
        return Optional.empty();
    }

    /** Marks all pieces of a name in a drawing in that box. */
    public void mark(Canvas canvas, Box box, String name) {
        for (int k = 0; k < shown(); k++) {
            Box sheet = place(k, box);
            for (Placed each : layout.sheets().get(k).placed()) {
                if (each.piece().name().equals(name)) {
                    canvas.draw(Style.POINTED_PANEL, path(each, scale(box.width()), sheet));
                }
            }
        }
    }

    /** Its length runs to the right, its width down. */
    private static void sheet(Canvas canvas, List<Placed> placed, double scale, Box box) {
        canvas.draw(Style.FRAME, box);
        for (Placed each : placed) {
            canvas.draw(Style.PIECE, path(each, scale, box));
        }
    }

    private static Path path(Placed each, double scale, Box box) {
        List<double[]> corners = each.outline().corners().stream()
                .map(p -> new double[] {box.x() + scale * p.y(), box.y() + scale * p.x()})
                .toList();
        return Path.through(corners, true);
    }
}
