package simmerpoint.dish;

import java.util.List;
import simmerpoint.geometry.Vec;

/**
 * The edge of one panel as a closed polygon, for drawings.
 *
 * @param panel its number, as in {@link MirrorPoints}
 * @param edge corners in order, counter-clockwise seen from the sun, the last joined to the first; dish frame, m; a
 *     curved edge is given by points on it
 * @param hole the edge of a hole in the panel, empty for all but a smooth dish with a hub
 */
public record PanelOutline(int panel, List<Vec> edge, List<Vec> hole) {
    /** Keeps copies of the lists. */
    public PanelOutline {
        edge = List.copyOf(edge);
        hole = List.copyOf(hole);
    }
}
