package simmerpoint.scenario;

import static simmerpoint.units.Dimension.COUNT;
import static simmerpoint.units.Dimension.LENGTH;

import java.util.List;

/** The keys of {@code title} and {@code dish}. */
final class DishKeys {
    static final String FLAT_RINGS = "flat-rings";
    static final String BENT_STRIPS = "bent-strips";
    static final String SQUARE_TILES = "square-tiles";
    static final String HEXAGON_TILES = "hexagon-tiles";
    static final String SMOOTH = "smooth";
    static final String FROM_FILE = "from-file";
    static final List<String> CUTS = List.of(FLAT_RINGS, BENT_STRIPS, SQUARE_TILES, HEXAGON_TILES, SMOOTH, FROM_FILE);
    static final List<String> SPACINGS = List.of("equal-width", "equal-depth-step", "equal-length");
    static final List<String> MESH_UNITS = List.of("mm", "cm", "m", "in", "ft");

    private static final Range SIZE = Range.between(LENGTH, "1 cm", "100 m");

    private DishKeys() {}

    static List<Key> keys() {
        KeyMaker dish = KeyMaker.in("dish");
        KeyMaker surface = KeyMaker.in("dish.surface");
        KeyMaker sectors = surface.onlyFor(FLAT_RINGS, BENT_STRIPS);
        KeyMaker rings = surface.onlyFor(FLAT_RINGS);
        KeyMaker tiles = surface.onlyFor(SQUARE_TILES, HEXAGON_TILES);
        KeyMaker mesh = surface.onlyFor(FROM_FILE);
        return List.of(
                KeyMaker.in("").text("title", "", "Tea kitchen at the lake hut", "One line that heads every answer."),
                dish.length("diameter", null, "1.20 m", SIZE, "Width of the dish across its outer corners."),
                dish.length("focal-length", null, "0.80 m", SIZE, "From the middle of the dish to its focus."),
                dish.length(
                        "hub",
                        "0 mm",
                        "60 mm",
                        SIZE_OR_NONE,
                        "Width of the hole in the middle, across the innermost corners."),
                dish.length("gap", "0 mm", "2 mm", SIZE_OR_NONE, "Width of the slit between neighbouring panels."),
                surface.word("cut", null, CUTS, "How the surface is made up of panels."),
                sectors.count(
                        "sectors",
                        "24",
                        Range.between(COUNT, "3", "10000"),
                        "Number of sectors or strips round the dish."),
                rings.count("rings", "6", Range.between(COUNT, "1", "10000"), "Number of rings from hub to rim."),
                rings.word("spacing", "equal-width", SPACINGS, "Where the borders between rings lie along a rib."),
                tiles.length(
                        "tile",
                        null,
                        "50 mm",
                        Range.between(LENGTH, "0.5 mm", "100 m"),
                        "Side of a square tile, or width of a hexagon across its flats."),
                mesh.file(
                        "file", "dish.obj", "Wavefront OBJ mesh of the panels, axis along z, middle of the dish at 0."),
                mesh.word("unit", null, MESH_UNITS, "Unit of the numbers in the mesh file."));
    }

    private static final Range SIZE_OR_NONE = Range.between(LENGTH, "0 mm", "100 m");
}
