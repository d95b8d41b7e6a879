package simmerpoint.dish.cut;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Area of mirrors that others lie over, by the areas of the JDK. Round edges are taken as {@code PanelOutline} gives them. */
final class HiddenArea {
    private HiddenArea() {}

    /** Of the mirrors of a zone under those of others, m². */
    static double of(ZoneSampler zone, List<ZoneSampler> above) {
        List<Path2D> covers = above.stream()
                .flatMap(other -> other.finder().outlines().stream())
                .map(PanelFinder::path)
                .toList();
        return zone.finder().outlines().stream()
                .map(PanelFinder::path)
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

    /** Gauss's formula, holes negative: the areas of the JDK run round them the other way. */
    private static double size(Area area) {
        double twice = 0;
        double[] at = new double[6];
        double x = 0;
        double y = 0;
        double firstX = 0;
        double firstY = 0;
        for (PathIterator path = area.getPathIterator(null); !path.isDone(); path.next()) {
            int segment = path.currentSegment(at);
            if (segment == PathIterator.SEG_MOVETO) {
                firstX = at[0];
                firstY = at[1];
            } else {
                double toX = segment == PathIterator.SEG_CLOSE ? firstX : at[0];
                double toY = segment == PathIterator.SEG_CLOSE ? firstY : at[1];
                twice += x * toY - toX * y;
                at[0] = toX;
                at[1] = toY;
            }
            x = at[0];
            y = at[1];
        }
        return Math.abs(twice) / 2;
    }
}
