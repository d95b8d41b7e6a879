package simmerpoint.study.design;

import java.util.Map;

/**
 * A dish as a search knows it, in whole centimetres, which is as exactly as anybody sets one out.
 *
 * @param layout how it is cut
 * @param diameterCentimetres across the corners
 * @param focalCentimetres focal length
 */
public record DishCandidate(PanelLayout layout, int diameterCentimetres, int focalCentimetres) {
    /** The keys of a scenario file that say so, as typed in it. */
    public Map<String, String> keys() {
        Map<String, String> keys = layout.keys();
        keys.put("dish.diameter", diameterCentimetres + " cm");
        keys.put("dish.focal-length", focalCentimetres + " cm");
        return keys;
    }
}
