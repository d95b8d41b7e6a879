package simmerpoint.dish.cut;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Stream;
import simmerpoint.dish.PanelOutline;

/** Area of mirrors that others lie over, by the areas of the JDK. Round edges are taken as {@code PanelOutline} gives them. */
final class HiddenArea {
    private HiddenArea() {}

    /** Of the mirrors of a zone under those of others, m². */
    static double of(ZoneSampler zone, List<ZoneSampler> above) {
        List<Path2D> covers = above.stream()
                .flatMap(other -> other.outlines().stream())
                .map(HiddenArea::path)
                .toList();
        return zone.outlines().stream()
                .map(HiddenArea::path)
                .mapToDouble(panel -> hidden(panel, covers))
                .sum();
    }

    /** A panel in plan with its hole, if it has one. */
    private static Path2D path(PanelOutline outline) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        Stream.of(outline.edge(), outline.hole())
                .filter(edge -> !edge.isEmpty())
                .forEach(edge -> {
                    path.moveTo(edge.get(0).x(), edge.get(0).y());
                    edge.stream().skip(1).forEach(p -> path.lineTo(p.x(), p.y()));
                    path.closePath();
                });
        return path;
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
