package simmerpoint.workshop;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Polygon;

/** A card whose lower edge is that of the ribs from hub to rim: laid in along a rib it touches the mirror everywhere. */
final class CardTemplate {
    /** Width of the card above the line from hub to rim, m: stiff enough and easy to hold. */
    private static final double ABOVE = 0.05;

    private CardTemplate() {}

    static Piece of(RibShape rib) {
        List<Point> edge = rib.mirrorEdge();
        Point hub = edge.get(0);
        Point rim = edge.get(edge.size() - 1);
        double length = hub.distance(rim);
        double up = ABOVE * (rim.x() - hub.x()) / length;
        double back = ABOVE * (rim.y() - hub.y()) / length;
        List<Point> corners = new ArrayList<>(edge);
        corners.add(new Point(rim.x() - back, rim.y() + up));
        corners.add(new Point(hub.x() - back, hub.y() + up));
        Polygon level = new Polygon(corners).turned(-Math.atan2(rim.y() - hub.y(), rim.x() - hub.x()));
        return new Piece("card of the curve", Piece.Use.TEMPLATE, 1, level.atOrigin(), false, List.of(), List.of());
    }
}
