package simmerpoint.dish.cut;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import simmerpoint.geometry.Polygon;

/** Area of mirrors that others lie over, by the areas of the JDK. Round edges are taken as {@code PanelOutline} gives them. */
final class HiddenArea {
    private HiddenArea() {}

    /** Of the mirrors of a zone under those of others, m². */
    static double of(ZoneSampler zone, List<ZoneSampler> above) {
        List<Path2D> covers = above.stream()
                .flatMap(other -> other.outlines().stream())
                .map(PlanPaths::of)
                .toList();
        return zone.outlines().stream()
                .map(PlanPaths::of)
                .mapToDouble(panel -> hidden(panel, covers))
                .sum();
    }

    private static double hidden(Path2D panel, List<Path2D> covers) {
        Rectangle2D box = panel.getBounds2D();
        Area over = new Area();
        covers.stream()
                .filter(cover -> cover.getBounds2D().intersects(box))
                .forEach(cover -> over.add(new Area(cover)));
        over.intersect(new Area(panel));
        return size(over);
    }

    private static double size(Area area) {
        return Math.abs(
                PlanPaths.edges(area).stream().mapToDouble(Polygon::area).sum());
    }
}
