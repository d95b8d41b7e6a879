package simmerpoint.dish.cut;

import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import simmerpoint.dish.PanelOutline;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Polygon;

/** Polygons in plan as paths of the JDK, whose areas can be joined and taken from each other, and back. */
final class PlanPaths {
    private PlanPaths() {}

    /** A polygon. */
    static Path2D of(List<Point> corners) {
        Path2D path = new Path2D.Double();
        add(corners, path);
        return path;
    }

    /** A panel with its hole, if it has one. */
    static Path2D of(PanelOutline outline) {
        Path2D path = new Path2D.Double(Path2D.WIND_EVEN_ODD);
        Stream.of(outline.edge(), outline.hole())
                .filter(edge -> !edge.isEmpty())
                .forEach(edge ->
                        add(edge.stream().map(p -> new Point(p.x(), p.y())).toList(), path));
        return path;
    }

    private static void add(List<Point> corners, Path2D path) {
        path.moveTo(corners.get(0).x(), corners.get(0).y());
        corners.stream().skip(1).forEach(p -> path.lineTo(p.x(), p.y()));
        path.closePath();
    }

    /** The edges of an area with straight sides; those of holes run the other way round. */
    static List<Polygon> edges(Area area) {
        List<Polygon> edges = new ArrayList<>();
        List<Point> corners = new ArrayList<>();
        double[] at = new double[6];
        for (PathIterator path = area.getPathIterator(null); !path.isDone(); path.next()) {
            if (path.currentSegment(at) == PathIterator.SEG_CLOSE) {
                if (corners.size() >= 3) {
                    edges.add(new Polygon(corners));
                }
                corners.clear();
            } else {
                corners.add(new Point(at[0], at[1]));
            }
        }
        return edges;
    }
}
