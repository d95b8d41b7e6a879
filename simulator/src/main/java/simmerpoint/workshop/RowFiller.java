package simmerpoint.workshop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.stream.Stream;
import simmerpoint.geometry.Polygon;
import simmerpoint.workshop.CuttingStock.Size;
import simmerpoint.workshop.SheetLayout.Placed;
import simmerpoint.workshop.SheetLayout.Sheet;

/** Fills sheets row by row: each piece goes into the first row that has room for it. */
final class RowFiller {
    /** Lengths that differ by less are the same, m. */
    private static final double NEAR = 1e-9;

    private final Size size;
    private final double spacing;
    private final List<Row> rows = new ArrayList<>();
    private final List<Double> filled = new ArrayList<>();
    private final RowGaps gaps = new RowGaps();
    private final IdentityHashMap<Polygon, List<Way>> ways = new IdentityHashMap<>();

    RowFiller(Size size, double spacing) {
        this.size = size;
        this.spacing = spacing;
    }

    /**
     * A piece in a row.
     *
     * @param way how it lies
     * @param left where it begins
     */
    private record Spot(Way way, double left) {
        double right() {
            return left + way.width();
        }
    }

    /**
     * A way that a piece may lie.
     *
     * @param shape its outline at the origin
     * @param width how far it reaches
     */
    private record Way(Polygon shape, double width) {
        Way(Polygon shape) {
            this(shape, shape.width());
        }
    }

    /** A row: where it lies, and what lies in it. */
    private static final class Row {
        private final int sheet;
        private final double foot;
        private final double height;
        private final List<Placed> placed = new ArrayList<>();
        private Spot last;

        Row(int sheet, double foot, double height) {
            this.sheet = sheet;
            this.foot = foot;
            this.height = height;
        }

        void put(Piece piece, Spot spot) {
            placed.add(new Placed(piece, spot.way().shape().moved(spot.left(), foot)));
            last = spot;
        }
    }

    /** Places one piece, no higher than those before it. */
    void add(Piece piece) {
        double height = piece.outline().height();
        for (Row row : rows) {
            if (height <= row.height && tryIn(row, piece)) {
                return;
            }
        }
        Row row = newRow(height);
        row.put(piece, first(piece.outline()));
    }

    /** The first of a row lies so that another one like it comes nearest. */
    private Spot first(Polygon outline) {
        return bothWays(outline).stream()
                .map(way -> new Spot(way, 0))
                .min((a, b) ->
                        closer(beside(a, outline).right(), beside(b, outline).right()))
                .orElseThrow();
    }

    private static int closer(double a, double b) {
        return Math.abs(a - b) < NEAR ? 0 : Double.compare(a, b);
    }

    /** The next piece beside the last one: the way round after which one more like it takes least room. */
    private Spot beside(Spot last, Polygon outline) {
        return besides(last, outline)
                .min((a, b) -> {
                    int after = closer(least(a, outline), least(b, outline));
                    return after == 0 ? closer(a.right(), b.right()) : after;
                })
                .orElseThrow();
    }

    /** How far the row reaches with one more piece, whichever way round. */
    private double least(Spot last, Polygon outline) {
        return besides(last, outline).mapToDouble(Spot::right).min().orElseThrow();
    }

    private Stream<Spot> besides(Spot last, Polygon outline) {
        return bothWays(outline).stream()
                .map(way ->
                        new Spot(way, last.left() + gaps.leastShift(last.way().shape(), way.shape()) + spacing));
    }

    private List<Way> bothWays(Polygon outline) {
        return ways.computeIfAbsent(
                outline,
                shape -> List.of(new Way(shape), new Way(shape.turned(Math.PI).atOrigin())));
    }

    private boolean tryIn(Row row, Piece piece) {
        Spot best = beside(row.last, piece.outline());
        if (best.right() > size.width() + NEAR) {
            best = besides(row.last, piece.outline())
                    .min(Comparator.comparingDouble(Spot::right))
                    .orElseThrow();
        }
        if (best.right() > size.width() + NEAR) {
            return false;
        }
        row.put(piece, best);
        return true;
    }

    private Row newRow(double height) {
        int sheet = 0;
        while (sheet < filled.size() && filled.get(sheet) + spacing + height > size.length() + NEAR) {
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
