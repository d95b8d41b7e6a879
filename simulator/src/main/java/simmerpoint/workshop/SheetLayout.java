package simmerpoint.workshop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import simmerpoint.geometry.Polygon;
import simmerpoint.units.SawLength;
import simmerpoint.units.UnitSystem;
import simmerpoint.workshop.CuttingStock.Size;

/**
 * Pieces laid out on sheets in rows across or along, turned round where that saves room: of all ways tried the one that takes least.
 *
 * @param sheet size of each, m
 * @param sheets in the order in which they are filled
 */
public record SheetLayout(Size sheet, List<Sheet> sheets) {
    private static final double NEAR = 1e-9;

    /** How the longer side of each piece lies. */
    public enum Grain {
        /** As saves most. */
        ANY,
        /** Along the length of the sheet. */
        ALONG,
        /** Across it. */
        ACROSS;

        static Grain of(String word) {
            return valueOf(word.toUpperCase(Locale.ROOT));
        }
    }

    /**
     * A piece on its sheet.
     *
     * @param piece what it is
     * @param outline where it lies, x along the width of the sheet, y along its length, m
     */
    public record Placed(Piece piece, Polygon outline) {}

    /**
     * A sheet with its pieces.
     *
     * @param placed its pieces
     */
    public record Sheet(List<Placed> placed) {
        /** How much of its length is used, m. */
        public double usedLength() {
            return placed.stream()
                    .mapToDouble(p -> p.outline().foot() + p.outline().height())
                    .max()
                    .orElse(0);
        }
    }

    /** Keeps a copy of the list. */
    public SheetLayout {
        sheets = List.copyOf(sheets);
    }

    /**
     * Lays out all pieces.
     *
     * @param spacing room between them, m
     * @throws CuttingException if a piece is larger than a sheet
     */
    public static SheetLayout of(List<Piece> pieces, Size size, double spacing, String sheetName, UnitSystem units)
            throws CuttingException {
        return of(pieces, size, spacing, sheetName, units, Grain.ANY);
    }

    /**
     * The same with a grain: rows run across the sheet, so a piece that lies along them lies across the sheet.
     *
     * @throws CuttingException if a piece is larger than a sheet
     */
    static SheetLayout of(
            List<Piece> pieces, Size size, double spacing, String sheetName, UnitSystem units, Grain grain)
            throws CuttingException {
        if (grain != Grain.ANY) {
            return filled(pieces, size, spacing, sheetName, units, List.of(grain == Grain.ALONG));
        }
        List<SheetLayout> ways = new ArrayList<>();
        for (List<Boolean> upright : List.of(List.of(false, true), List.of(true, false))) {
            ways.add(filled(pieces, size, spacing, sheetName, units, upright));
            ways.add(filled(pieces, size.transposed(), spacing, sheetName, units, upright)
                    .turned());
        }
        return ways.stream()
                .min(Comparator.comparingDouble(SheetLayout::usedLength))
                .orElseThrow();
    }

    /** The same with rows along the sheets. */
    private SheetLayout turned() {
        List<Sheet> turned = sheets.stream()
                .map(each -> new Sheet(each.placed().stream()
                        .map(p -> new Placed(
                                p.piece(), p.outline().turned(Math.PI / 2).moved(sheet.length(), 0)))
                        .toList()))
                .toList();
        return new SheetLayout(sheet.transposed(), turned);
    }

    private static SheetLayout filled(
            List<Piece> pieces, Size size, double spacing, String sheetName, UnitSystem units, List<Boolean> upright)
            throws CuttingException {
        List<Piece> ordered = new ArrayList<>();
        for (Piece piece : pieces) {
            ordered.add(lying(piece, size, sheetName, units, upright));
        }
        ordered.sort(Comparator.comparingDouble((Piece p) -> -p.outline().height()));
        RowFiller filler = new RowFiller(size, spacing);
        for (Piece piece : ordered) {
            for (int k = 0; k < piece.count(); k++) {
                filler.add(piece);
            }
        }
        return new SheetLayout(size, filler.sheets());
    }

    /** Lying along the row or standing upright in it: the first of the ways allowed in which it fits. */
    private static Piece lying(Piece piece, Size size, String sheetName, UnitSystem units, List<Boolean> upright)
            throws CuttingException {
        Polygon flat = piece.outline();
        for (boolean turned : upright) {
            Polygon way = turned ? flat.turned(Math.PI / 2).atOrigin() : flat;
            if (holds(size, way)) {
                return piece.lying(way);
            }
        }
        throw tooLarge(piece, size, sheetName, units);
    }

    private static boolean holds(Size size, Polygon way) {
        return way.width() <= size.width() + NEAR && way.height() <= size.length() + NEAR;
    }

    /** Whether a piece goes onto a sheet with its grain as asked. */
    static boolean fits(Polygon outline, Size size, Grain grain) {
        boolean lying = grain != Grain.ALONG && holds(size, outline);
        return lying || (grain != Grain.ACROSS && holds(size.transposed(), outline));
    }

    /**
     * Refuses pieces that are larger than a sheet.
     *
     * @throws CuttingException if one is
     */
    static void check(List<Piece> pieces, Size size, String sheetName, UnitSystem units) throws CuttingException {
        for (Piece piece : pieces) {
            if (!fits(piece.outline(), size, Grain.ANY)) {
                throw tooLarge(piece, size, sheetName, units);
            }
        }
    }

    private static CuttingException tooLarge(Piece piece, Size size, String sheetName, UnitSystem units) {
        Polygon flat = piece.outline();
        return new CuttingException("the piece \"" + piece.name() + "\" ("
                + SawLength.text(flat.width(), flat.height(), units) + ") is larger than a " + sheetName + " ("
                + SawLength.text(size.width(), size.length(), units) + "); take larger ones (build." + sheetName
                + "-width, build." + sheetName + "-length) or more and smaller pieces.");
    }

    /** Area of all pieces ÷ area of the sheets, the last one only as far as it is used. */
    public double usedShare() {
        double pieces = sheets.stream()
                .flatMap(s -> s.placed().stream())
                .mapToDouble(p -> p.outline().area())
                .sum();
        return pieces / (sheet.width() * usedLength());
    }

    /** Length at the end of the last sheet from which nothing is cut, m. */
    public double leftWhole() {
        return sheets.size() * sheet.length() - usedLength();
    }

    /** Length of sheet or roll that is used, all sheets one behind the other, m. */
    public double usedLength() {
        return sheets.isEmpty()
                ? 0
                : (sheets.size() - 1) * sheet.length()
                        + sheets.get(sheets.size() - 1).usedLength();
    }
}
