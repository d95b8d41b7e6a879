package simmerpoint.study.design;

import java.util.Map;
import java.util.TreeMap;

/**
 * How a dish is cut, without its size.
 *
 * @param bent strips bent along the ribs; else flat rings
 * @param sectors number of sectors round the axis
 * @param rings rings from hub to rim; 1 for bent strips
 */
public record PanelLayout(boolean bent, int sectors, int rings) {
    /** Refuses strips with several rings. */
    public PanelLayout {
        if (!(sectors >= 3 && rings >= 1 && (!bent || rings == 1))) {
            throw new IllegalArgumentException("no layout has " + sectors + " sectors and " + rings + " rings");
        }
    }

    /** Number of panels. */
    public int panels() {
        return sectors * rings;
    }

    /** The keys of a scenario file that say so, as typed in it. */
    Map<String, String> keys() {
        Map<String, String> keys = new TreeMap<>();
        keys.put("dish.surface.cut", bent ? "bent-strips" : "flat-rings");
        keys.put("dish.surface.sectors", Integer.toString(sectors));
        if (!bent) {
            keys.put("dish.surface.rings", Integer.toString(rings));
        }
        return keys;
    }
}
