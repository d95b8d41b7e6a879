package simmerpoint.scenario;

import static simmerpoint.units.Dimension.COUNT;
import static simmerpoint.units.Dimension.LENGTH;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.dish.CutKind;
import simmerpoint.dish.CutParameter;
import simmerpoint.dish.cut.Cuts;

/** The keys of {@code title} and {@code dish}. */
final class DishKeys {
    static final String CUT = "dish.surface.cut";
    static final List<String> CUTS = Cuts.ALL.stream().map(CutKind::word).toList();

    private static final Range SIZE = Range.between(LENGTH, "1 cm", "100 m");
    private static final Range SIZE_OR_NONE = Range.between(LENGTH, "0 mm", "100 m");

    private DishKeys() {}

    static List<Key> keys() {
        KeyMaker dish = KeyMaker.in("dish");
        List<Key> keys = new ArrayList<>(List.of(
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
                KeyMaker.in("dish.surface").word("cut", null, CUTS, "How the surface is made up of panels.")));
        Cuts.parameters().forEach(parameter -> keys.add(key(parameter)));
        return keys;
    }

    private static Key key(CutParameter p) {
        KeyMaker surface = KeyMaker.in("dish.surface").onlyFor(wordsOfCutsWith(p));
        return switch (p.type()) {
            case COUNT -> surface.count(p.name(), p.example(), Range.between(COUNT, p.least(), p.most()), p.sentence());
            case LENGTH ->
                surface.length(
                        p.name(),
                        p.defaultText(),
                        p.example(),
                        Range.between(LENGTH, p.least(), p.most()),
                        p.sentence());
            case WORD -> surface.word(p.name(), p.defaultText(), p.words(), p.sentence());
            case FILE -> surface.file(p.name(), p.example(), p.sentence());
        };
    }

    private static String[] wordsOfCutsWith(CutParameter parameter) {
        return Cuts.ALL.stream()
                .filter(kind -> kind.takes(parameter))
                .map(CutKind::word)
                .toArray(String[]::new);
    }

    /** The kind of cut that a file asks for. */
    static CutKind cutKind(ScenarioValues values) {
        return Cuts.find(values.text(CUT)).orElseThrow();
    }

    /** Full path of the key of a cut's parameter. */
    static String path(CutParameter parameter) {
        return "dish.surface." + parameter.name();
    }
}
