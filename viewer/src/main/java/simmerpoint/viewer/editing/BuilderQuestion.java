package simmerpoint.viewer.editing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.cut.OffAxisShell;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.keys.ZoneKeys;
import simmerpoint.units.UnitSystem;

/** The few questions with which a change of the design begins, in a builder's words and in a builder's order. */
enum BuilderQuestion {
    /** The pan. */
    PAN(
            "What do you cook in?",
            "M4 14 H36 V30 Q36 34 32 34 H8 Q4 34 4 30 Z M2 12 H38 M16 8 H24",
            "pan.diameter",
            "pan.water"),
    /** The width of the dish. */
    WIDTH(
            "How wide is the dish?",
            "M3 14 Q20 38 37 14 M3 8 H37 M3 4 V12 M37 4 V12",
            "dish.diameter",
            "dish.surface.width",
            "dish.surface.height"),
    /** Its depth. */
    DEPTH(
            "How deep is it?",
            "M3 10 Q20 42 37 10 M3 10 H37 M20 10 V25 M16 21 L20 25 L24 21",
            "dish.focal-length",
            "dish.surface.depth"),
    /** Its rim. */
    RIM(
            "What is its rim like?",
            "M12 5 H28 L35 12 V28 L28 35 H12 L5 28 V12 Z",
            "dish.rim.width",
            "dish.rim.corner-cut",
            "dish.rim.sides",
            "dish.rim.slot-width"),
    /** Its zones, whose keys come with them. */
    ZONES("Is it the same all over?", "M20 3 A17 17 0 1 0 20.1 3 Z M20 11 A9 9 0 1 0 20.1 11 Z"),
    /** Its cut. */
    CUT(
            "How is it cut?",
            "M20 3 L34 10 L37 24 L28 36 H12 L3 24 L6 10 Z M20 20 L20 3 M20 20 L34 10 M20 20 L37 24 M20 20 L28 36 M20 20 L12 36"
                    + " M20 20 L3 24 M20 20 L6 10",
            "dish.surface.sectors",
            "dish.surface.rings",
            "dish.surface.tile",
            "dish.surface.deepest-at",
            "dish.surface.near-end"),
    /** The mirror. */
    MIRROR("What is glued on?", "M6 34 L34 34 M10 30 L20 6 M30 30 L20 6 M14 12 L6 4 M26 12 L34 4", "mirror.material"),
    /** The care. */
    CARE("How carefully do you build?", "M4 28 H36 V34 H4 Z M8 28 V24 M14 28 V22 M20 28 V24 M26 28 V22 M32 28 V24"),
    /** The place. */
    WHERE("Where?", "M20 36 Q8 22 8 15 A12 12 0 1 1 32 15 Q32 22 20 36 Z M20 10 A5 5 0 1 0 20.1 10 Z"),
    /** The day and hour. */
    WHEN("When?", "M20 4 A16 16 0 1 0 20.1 4 Z M20 20 V9 M20 20 L28 24"),
    /** The wind. */
    WIND(
            "How windy is it?",
            "M3 14 H25 Q31 14 31 9 Q31 4 26 5 M3 21 H33 M3 28 H22 Q28 28 28 33 Q28 37 24 36",
            "air.wind");

    /** Figures that would override a material's own. */
    private static final List<String> MIRROR_FIGURES = List.of(
            "mirror.reflectance",
            "mirror.scattered",
            "mirror.slope-error",
            "mirror.beam-spread",
            "mirror.wide-share",
            "mirror.wide-spread");

    private static final Map<String, Double> DEPTHS = Map.of("shallow", 0.75, "usual", 0.6, "deep", 0.45);

    private final String words;
    private final String picture;
    /** Made by List.of, which nobody can change. */
    @SuppressWarnings("ImmutableEnumChecker")
    private final List<String> keys;

    BuilderQuestion(String words, String picture, String... keys) {
        this.words = words;
        this.picture = picture;
        this.keys = List.of(keys);
    }

    String words() {
        return words;
    }

    /** Its small picture, as a path on a square of 40. */
    String picture() {
        return picture;
    }

    /** Keys to be typed. */
    List<String> keys() {
        return keys;
    }

    /** Sensible answers. */
    List<Start> starts(Scenario scenario, UnitSystem units) {
        return switch (this) {
            case PAN -> pots(units == UnitSystem.INCH);
            case WIDTH -> isShell(scenario) ? shellWidths(units == UnitSystem.INCH) : widths(units);
            case DEPTH ->
                Stream.of("shallow", "usual", "deep")
                        .map(each -> depth(each, scenario, units))
                        .toList();
            case RIM -> RimStarts.of(scenario, units);
            case ZONES -> ZoneStarts.of(scenario, units);
            case CUT -> cuts();
            case MIRROR ->
                Stream.of(
                                "aluminised polyester film",
                                "silvered glass tiles",
                                "polished aluminium sheet",
                                "kitchen foil on card")
                        .map(each -> Start.of(each.split(" ")[0], each, "mirror.material", each)
                                .instead(MIRROR_FIGURES))
                        .toList();
            case CARE ->
                List.of(
                        care(scenario, "rough", "roughly", units == UnitSystem.INCH ? "0.125 in" : "3 mm", "8 mrad"),
                        care(
                                scenario,
                                "careful",
                                "with care",
                                units == UnitSystem.INCH ? "0.03125 in" : "1 mm",
                                "4 mrad"),
                        care(
                                scenario,
                                "exact",
                                "very exactly",
                                units == UnitSystem.INCH ? "0.015625 in" : "0.5 mm",
                                "2 mrad"));
            case WIND ->
                List.of(
                        Start.of("calm", "calm", "air.wind", "0.5 m/s"),
                        Start.of("breeze", "a breeze", "air.wind", "2 m/s"),
                        Start.of("windy", "windy", "air.wind", "5 m/s"));
            case WHERE, WHEN -> List.of();
        };
    }

    /** Whether it means something for a dish: a mesh and what has a size of its own come with their rim, and in one piece. */
    boolean fits(Scenario scenario) {
        return (this != RIM && this != ZONES)
                || ZoneKeys.isZone(scenario.dish().cut().kind());
    }

    private static boolean isShell(Scenario scenario) {
        return scenario.dish().cut() instanceof OffAxisShell;
    }

    private static List<Start> widths(UnitSystem units) {
        return List.of(
                Start.length("narrow", "dish.diameter", "80 cm", "32 in", units),
                Start.length("usual", "dish.diameter", "1.2 m", "48 in", units),
                Start.length("wide", "dish.diameter", "1.6 m", "60 in", units));
    }

    private static List<Start> shellWidths(boolean inches) {
        return inches
                ? List.of(
                        shell("narrow", "24 in", "26.5 in"),
                        shell("usual", "36 in", "39.5 in"),
                        shell("wide", "48 in", "53 in"))
                : List.of(
                        shell("narrow", "60 cm", "66 cm"),
                        shell("usual", "90 cm", "99 cm"),
                        shell("wide", "1.2 m", "1.32 m"));
    }

    private static Start shell(String id, String width, String height) {
        return Start.of(id, width, "dish.surface.width", width, "dish.surface.height", height)
                .instead(List.of("dish.surface.deepest-at"));
    }

    private static List<Start> pots(boolean inches) {
        return inches
                ? List.of(
                        pot("small", "small pot", "7 in", "4 in", "1.5 quarts"),
                        pot("family", "family pot", "9.5 in", "4.5 in", "2 quarts"),
                        pot("big", "big pot", "12.5 in", "7 in", "6 quarts"))
                : List.of(
                        pot("small", "small pot", "18 cm", "10 cm", "1.5 l"),
                        pot("family", "family pot", "24 cm", "11 cm", "2 l"),
                        pot("big", "big pot", "32 cm", "18 cm", "6 l"));
    }

    private static Start pot(String id, String words, String diameter, String height, String water) {
        return Start.of(id, words, "pan.diameter", diameter, "pan.height", height, "pan.water", water)
                .instead(List.of("pan.mass"));
    }

    /** A dish without ribs has none to cut untrue, and no sheet that sags between them; one without panels only its surface. */
    private static Start care(Scenario scenario, String id, String words, String length, String tilt) {
        boolean panels = scenario.dish().cut().has(CutTrait.PANELS);
        return scenario.dish().cut().has(CutTrait.RIBS)
                ? Start.of(
                        id,
                        words,
                        "workmanship.rib-cut",
                        length,
                        "workmanship.sag",
                        length,
                        "workmanship.panel-edge",
                        length,
                        "mirror.panel-tilt",
                        tilt)
                : Start.of(id, words, panels ? "mirror.panel-tilt" : "mirror.slope-error", tilt);
    }

    /** A focal length that suits the diameter, in round figures. */
    private static Start depth(String word, Scenario scenario, UnitSystem units) {
        double focal = DEPTHS.get(word) * scenario.dish().diameterMetres();
        double unit = units.shortUnitMetres();
        if (scenario.dish().cut() instanceof OffAxisShell shell) {
            double deep = shell.tape().depth() * shell.tape().focalLength() / focal;
            return Start.of(
                            word,
                            word,
                            "dish.surface.depth",
                            Math.max(1, Math.round(deep / unit)) + " " + units.shortUnit())
                    .instead(List.of("dish.surface.deepest-at"));
        }
        double grain = units == UnitSystem.INCH ? 1 : 5;
        long figure = Math.round(grain * Math.rint(focal / unit / grain));
        return Start.of(word, word, "dish.focal-length", Math.max(1, figure) + " " + units.shortUnit());
    }

    private static List<Start> cuts() {
        List<Start> all = new ArrayList<>();
        all.add(Start.of("rings", "flat panels in rings", CUT_KEY, "flat-rings"));
        all.add(Start.of("strips", "bent strips", CUT_KEY, "bent-strips"));
        all.add(Start.of("tiles", "square tiles", CUT_KEY, "square-tiles"));
        all.add(Start.of("hexagons", "six-sided tiles", CUT_KEY, "hexagon-tiles"));
        all.add(Start.of("antenna", "an old antenna", CUT_KEY, "off-axis-shell"));
        return all;
    }

    /** The key that says how the dish is cut: what goes with a choice is filled in by {@link ChoiceEdits}. */
    static final String CUT_KEY = "dish.surface.cut";
}
