package simmerpoint.scenario;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.cut.Cuts;

/**
 * Keys outside {@code dish.surface} that mean something only for some cuts: a smooth dish has no panels and gaps, a drawn
 * one neither hub nor gaps but its own.
 */
public final class CutKeys {
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

    /** Keys that must not be given beside a cut; none if there is no such cut. */
    public static List<String> inapplicable(String cutWord) {
        return Cuts.find(cutWord)
                .map(kind -> NEEDS.keySet().stream()
                        .filter(path -> !kind.has(NEEDS.get(path)))
                        .toList())
                .orElse(List.of());
    }
}
