package simmerpoint.scenario;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import simmerpoint.dish.CutKind;
import simmerpoint.dish.CutParameter;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.cut.Cuts;

/**
 * Keys outside {@code dish.surface} that mean something only for some cuts: a smooth dish has no panels and gaps, a drawn
 * one neither hub nor gaps but its own.
 */
public final class CutKeys {
    static final String CUT = "dish.surface.cut";

    /** What a cut must have for a key to apply to it. */
    private static final Map<String, CutTrait> NEEDS = new TreeMap<>(Map.of(
            "dish.gap", CutTrait.SEAMS,
            "dish.hub", CutTrait.PARABOLOID,
            "mirror.panel-tilt", CutTrait.PANELS,
            "workmanship.panel-edge", CutTrait.SEAMS,
            "workmanship.rib-cut", CutTrait.RIBS,
            "workmanship.rib-set", CutTrait.RIBS,
            "workmanship.sag", CutTrait.RIBS));

    private CutKeys() {}

    /** The kind of cut that a scenario asks for. */
    static CutKind kind(ScenarioValues values) {
        return Cuts.find(values.text(CUT)).orElseThrow();
    }

    /** Full path of the key of a cut's parameter. */
    static String path(CutParameter parameter) {
        return "dish.surface." + parameter.name();
    }

    /** Keys that apply only to cuts with a trait. */
    static List<String> needing(CutTrait trait) {
        return NEEDS.keySet().stream().filter(path -> NEEDS.get(path) == trait).toList();
    }

    /** Keys that must not be given beside a cut; none if there is no such cut. */
    public static List<String> inapplicable(String cutWord) {
        return Cuts.find(cutWord)
                .map(kind -> NEEDS.keySet().stream()
                        .filter(path -> !kind.has(NEEDS.get(path)))
                        .toList())
                .orElse(List.of());
    }
}
