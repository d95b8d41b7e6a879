package simmerpoint.dish.cut;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.stream.Stream;
import simmerpoint.dish.Cut;
import simmerpoint.dish.CutKind;
import simmerpoint.dish.CutParameter;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.PanelOutline;
import simmerpoint.dish.PanelSize;
import simmerpoint.geometry.Direction;
import simmerpoint.units.RangeCheck;

/**
 * Small flat mirrors of one shape that touch the paraboloid at their centres. They always leave slits between them, since
 * they lean, and, unless they are cut at rim and hub, bare edges.
 *
 * @param shape square or hexagon
 * @param tileMetres side of a square, width of a hexagon across its flats, above 0
 * @param atRim what is done with tiles that reach beyond the rim
 */
public record Tiles(TileShape shape, double tileMetres, AtRim atRim) implements Cut {
    /** What is done with tiles that reach beyond the rim. */
    public enum AtRim {
        /** They are not laid. */
        LEFT_OUT("left-out"),
        /** They are cut to the rim, and to the hub. */
        CUT("cut");

        private final String word;

        AtRim(String word) {
            this.word = word;
        }

        private static AtRim of(String word) {
            return Stream.of(values())
                    .filter(each -> each.word.equals(word))
                    .findFirst()
                    .orElseThrow();
        }
    }

    private static final CutParameter AT_RIM = CutParameter.word(
            "at-rim",
            AtRim.LEFT_OUT.word,
            Stream.of(AtRim.values()).map(each -> each.word).toList(),
            "What is done with tiles that reach beyond the rim, or into the hub or the zone within: they are left out, or cut to its edge.");

    /** Width of a tile. */
    public static final CutParameter TILE = CutParameter.length(
            "tile",
            "50 mm",
            "0.5 mm to 100 m",
            "10 mm to 200 mm",
            "Side of a square tile, or width of a hexagon across its flats.");

    /** What is known of squares beforehand. */
    public static final CutKind SQUARE_KIND = kind("square-tiles", "small flat mirrors, square", TileShape.SQUARE);

    /** What is known of hexagons beforehand. */
    public static final CutKind HEXAGON_KIND =
            kind("hexagon-tiles", "small flat mirrors with six sides", TileShape.HEXAGON);

    /** Checks the width. */
    public Tiles {
        RangeCheck.require(tileMetres > 0, "tile", tileMetres, "above 0 m");
    }

    private static CutKind kind(String word, String meaning, TileShape shape) {
        return new CutKind(
                word,
                meaning,
                List.of(TILE, AT_RIM),
                Set.of(CutTrait.PARABOLOID, CutTrait.PANELS, CutTrait.SEAMS),
                values -> new Tiles(shape, values.length(TILE), AtRim.of(values.word(AT_RIM))));
    }

    /** Squares with sides of so many metres. */
    public static Tiles square(double side) {
        return new Tiles(TileShape.SQUARE, side, AtRim.LEFT_OUT);
    }

    /** Hexagons so many metres wide across their flats. */
    public static Tiles hexagon(double width) {
        return new Tiles(TileShape.HEXAGON, width, AtRim.LEFT_OUT);
    }

    private boolean isSquare() {
        return shape == TileShape.SQUARE;
    }

    @Override
    public CutKind kind() {
        return isSquare() ? SQUARE_KIND : HEXAGON_KIND;
    }

    @Override
    public MirrorSurface surface(DishPlan plan, Direction sunInDish) {
        return TileSurface.of(plan, this);
    }

    @Override
    public List<PanelOutline> outlines(DishPlan plan) {
        return PanelOutline.numbered(new TileLattice(plan, this).edges().stream());
    }

    @Override
    public boolean leavesOutCutPanels() {
        return atRim == AtRim.LEFT_OUT;
    }

    @Override
    public String description(DishPlan plan, String panels, DoubleFunction<String> length) {
        return panels + (isSquare() ? " square" : " hexagon") + " tiles of " + length.apply(tileMetres)
                + (isSquare() ? "" : " across their flats")
                + (atRim == AtRim.CUT ? ", cut at the rim" : "");
    }

    @Override
    public String shapeLossName() {
        return "flat tiles";
    }

    @Override
    public Optional<PanelSize> largestPanel(DishPlan plan) {
        return Optional.of(new PanelSize(tileMetres, tileMetres));
    }

    @Override
    public Optional<String> panelSizeLabel(DishPlan plan, DoubleFunction<String> length) {
        return Optional.of(length.apply(tileMetres) + (isSquare() ? " square" : " across its flats"));
    }

    @Override
    public double gapLimit(double diameterMetres, double hubMetres) {
        return diameterMetres / 2;
    }

    @Override
    public double estimatedPanels(double diameterMetres, double hubMetres, double gapMetres) {
        double pitch = tileMetres + gapMetres;
        double cell = pitch * pitch * shape.area();
        return Math.PI / 4 * (diameterMetres * diameterMetres - hubMetres * hubMetres) / cell;
    }

    @Override
    public boolean fits(DishPlan plan) {
        return new TileLattice(plan, this).count() > 0;
    }
}
