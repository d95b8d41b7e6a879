package simmerpoint.workshop;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.geometry.Polygon;
import simmerpoint.workshop.CuttingStock.Size;
import simmerpoint.workshop.SheetLayout.Placed;
import simmerpoint.workshop.SheetLayout.Sheet;

/** Fills sheets row by row: each piece goes into the first row that has room for it. */
final class RowFiller {
    private final Size size;
    private final double spacing;
    private final List<Row> rows = new ArrayList<>();
    private final List<Double> filled = new ArrayList<>();
    private final RowGaps gaps = new RowGaps();

    RowFiller(Size size, double spacing) {
        this.size = size;
        this.spacing = spacing;
    }

    /** A row: where it lies, and what lies in it. */
    private static final class Row {
        private final int sheet;
        private final double foot;
        private final double height;
        private final List<Placed> placed = new ArrayList<>();

        Row(int sheet, double foot, double height) {
            this.sheet = sheet;
            this.foot = foot;
            this.height = height;
        }

        Polygon last() {
            return placed.get(placed.size() - 1).outline();
        }
    }

    /** Places one piece, no higher than those before it. */
    void add(Piece piece) {
        for (Row row : rows) {
            if (piece.outline().height() <= row.height && tryIn(row, piece)) {
                return;
            }
        }
        Row row = newRow(piece.outline().height());
        row.placed.add(new Placed(piece, first(piece.outline()).moved(0, row.foot)));
    }

    /** The first of a row lies so that another one like it comes nearest. */
    private Polygon first(Polygon outline) {
        Polygon turned = outline.turned(Math.PI).atOrigin();
        return right(beside(turned, outline)) < right(beside(outline, outline)) - 1e-9 ? turned : outline;
    }

    /** The next piece beside the last one, whichever way round takes less room. */
    private Polygon beside(Polygon last, Polygon outline) {
        Polygon best = null;
        for (Polygon way : List.of(outline, outline.turned(Math.PI).atOrigin())) {
            Polygon placed = way.moved(gaps.leastShift(last, way.moved(0, last.foot())) + spacing, last.foot());
            if (best == null || right(placed) < right(best) - 1e-9) {
                best = placed;
            }
        }
        return best;
    }

    private boolean tryIn(Row row, Piece piece) {
        Polygon best = beside(row.last(), piece.outline());
        if (right(best) > size.width()) {
            return false;
        }
        row.placed.add(new Placed(piece, best));
        return true;
    }

    private static double right(Polygon polygon) {
        return polygon.left() + polygon.width();
    }

    private Row newRow(double height) {
        int sheet = 0;
        while (sheet < filled.size() && filled.get(sheet) + spacing + height > size.length()) {
            sheet++;
        }
        double foot = sheet < filled.size() ? filled.get(sheet) + spacing : 0;
        if (sheet == filled.size()) {
            filled.add(0.0);
        }
        filled.set(sheet, foot + height);
        Row row = new Row(sheet, foot, height);
        rows.add(row);
        return row;
    }

    /** All sheets with what lies on them. */
    List<Sheet> sheets() {
        List<Sheet> sheets = new ArrayList<>();
        for (int k = 0; k < filled.size(); k++) {
            int number = k;
            sheets.add(new Sheet(rows.stream()
                    .filter(row -> row.sheet == number)
                    .flatMap(row -> row.placed.stream())
                    .toList()));
        }
        return sheets;
    }
}
