package simmerpoint.study.design;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import simmerpoint.dish.CutKind;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.cut.Cuts;
import simmerpoint.dish.cut.FlatRings;

/**
 * How a dish is cut, without its size.
 *
 * @param cut one of {@link #CUTS}
 * @param sectors number of sectors round the axis
 * @param rings rings from hub to rim; 1 for a cut without rings
 */
public record PanelLayout(CutKind cut, int sectors, int rings) {
    /** Cuts that are laid out in sectors, one between each two ribs. */
    public static final List<CutKind> CUTS =
            Cuts.ALL.stream().filter(kind -> kind.has(CutTrait.RIBS)).toList();

    /** Refuses strips with several rings. */
    public PanelLayout {
        if (!(sectors >= 3 && rings >= 1 && (hasRings(cut) || rings == 1))) {
            throw new IllegalArgumentException("no layout has " + sectors + " sectors and " + rings + " rings");
        }
    }

    static boolean hasRings(CutKind cut) {
        return cut.takes(FlatRings.RINGS);
    }

    /** Whether its sectors are cut into rings, be it only one; else each is one strip. */
    public boolean hasRings() {
        return hasRings(cut);
    }

    /** Number of panels. */
    public int panels() {
        return sectors * rings;
    }

    /** The keys of a scenario file that say so, as typed in it. */
    Map<String, String> keys() {
        Map<String, String> keys = new TreeMap<>();
        keys.put("dish.surface.cut", cut.word());
        keys.put("dish.surface.sectors", Integer.toString(sectors));
        if (hasRings()) {
            keys.put("dish.surface.rings", Integer.toString(rings));
        }
        return keys;
    }
}
