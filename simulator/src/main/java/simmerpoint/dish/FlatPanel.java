package simmerpoint.dish;

import java.util.List;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Polygon;
import simmerpoint.geometry.Vec;

/**
 * The flat shape a panel is cut to.
 *
 * @param panel its number, as in {@link PanelOutline}
 * @param edge seen from its mirror side; y runs uphill, away from the dish's axis, m
 * @param bent whether it is bent along y once it is cut
 */
public record FlatPanel(int panel, Polygon edge, boolean bent) {
    /** Of a panel that is flat in the dish. */
    static FlatPanel of(PanelOutline outline) {
        List<Vec> edge = outline.edge();
        Vec area = Vec.area(edge);
        Vec normal = area.times(1 / area.length());
        Vec middle = Vec.mean(edge);
        Vec uphill = uphill(normal, middle);
        Vec across = uphill.cross(normal);
        return new FlatPanel(
                outline.panel(),
                new Polygon(edge.stream()
                        .map(p -> new Point(
                                p.minus(middle).dot(across), p.minus(middle).dot(uphill)))
                        .toList()),
                false);
    }

    /** The steepest way up in the panel; away from the axis where it is level. */
    private static Vec uphill(Vec normal, Vec middle) {
        Vec up = new Vec(0, 0, 1).minus(normal.times(normal.z()));
        if (up.length() < 1e-9) {
            Vec out = new Vec(middle.x(), middle.y(), 0);
            up = out.length() < 1e-9 ? new Vec(1, 0, 0) : out;
        }
        return up.times(1 / up.length());
    }
}
