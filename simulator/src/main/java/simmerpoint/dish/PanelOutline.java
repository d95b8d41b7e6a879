package simmerpoint.dish;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
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
    /** Outlines of panels numbered in the order of their edges; a panel without corners has none. */
    public static List<PanelOutline> numbered(Stream<List<Vec>> edges) {
        List<PanelOutline> all = new ArrayList<>();
        int[] next = {0};
        edges.forEachOrdered(edge -> {
            int panel = next[0]++;
            if (!edge.isEmpty()) {
                all.add(new PanelOutline(panel, edge, List.of()));
            }
        });
        return all;
    }

    /** Keeps copies of the lists. */
    public PanelOutline {
        edge = List.copyOf(edge);
        hole = List.copyOf(hole);
    }
}
