package simmerpoint.workshop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.FlatPanel;
import simmerpoint.dish.PanelOutline;
import simmerpoint.dish.PanelZones;
import simmerpoint.dish.Zone;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Polygon;
import simmerpoint.geometry.Vec;

/** The panels of a dish, equal ones together, and the film for them. */
final class PanelPieces {
    /** Panels whose edges differ by less are cut from one outline, m. */
    private static final double EQUAL = 2e-5;

    private PanelPieces() {}

    /** Equal panels and their numbers. */
    private static final class Group {
        private final FlatPanel first;
        private final List<Integer> panels = new ArrayList<>();

        Group(FlatPanel first) {
            this.first = first;
        }
    }

    /** One piece for each different panel, zone by zone, in each those nearest the middle first. */
    static List<Piece> mirrors(DishPlan plan) {
        Map<Integer, Double> distances = new HashMap<>();
        plan.outlines().forEach(outline -> distances.put(outline.panel(), distance(outline)));
        List<Zone> zones = plan.cut().zones();
        PanelZones numbers =
                zones.isEmpty() ? PanelZones.ONE : plan.surface(Direction.Z).zones();
        List<List<Group>> groups = new ArrayList<>();
        for (int zone = 0; zone < numbers.count(); zone++) {
            groups.add(new ArrayList<>());
        }
        for (FlatPanel panel : plan.cut().flatPanels(plan)) {
            groupOf(panel, groups.get(numbers.of(panel.panel()))).panels.add(panel.panel());
        }
        List<Piece> pieces = new ArrayList<>();
        for (int zone = 0; zone < groups.size(); zone++) {
            add(
                    groups.get(zone),
                    distances,
                    zones.isEmpty() ? "" : zones.get(zone).name() + " ",
                    pieces);
        }
        return pieces;
    }

    private static void add(List<Group> groups, Map<Integer, Double> distances, String zone, List<Piece> pieces) {
        int lettered = (int)
                pieces.stream().filter(piece -> piece.name().contains("panel ")).count();
        groups.sort(Comparator.comparingDouble(
                group -> group.panels.stream().mapToDouble(distances::get).min().orElseThrow()));
        for (Group group : groups) {
            String name = zone + (groups.size() == 1 ? name(group.first) : "panel " + letter(lettered++));
            Polygon outline = group.first.edge().inSmallestBox();
            pieces.add(new Piece(
                    name, Piece.Use.PANEL, group.panels.size(), outline, group.first.bent(), List.of(), group.panels));
        }
    }

    /** From the axis, to a tenth of a millimetre, so that rounding does not sort panels that are equally far. */
    private static double distance(PanelOutline outline) {
        Vec middle = Vec.mean(outline.edge());
        return Math.rint(1e4 * Math.hypot(middle.x(), middle.y()));
    }

    private static String name(FlatPanel panel) {
        return panel.bent() ? "strip" : "panel";
    }

    private static Group groupOf(FlatPanel panel, List<Group> groups) {
        for (Group group : groups) {
            if (group.first.bent() == panel.bent() && group.first.edge().sameShape(panel.edge(), EQUAL)) {
                return group;
            }
        }
        Group fresh = new Group(panel);
        groups.add(fresh);
        return fresh;
    }

    /** A, B, …, Z, AA, AB, … */
    static String letter(int number) {
        String last = Character.toString((char) ('A' + number % 26));
        return number < 26 ? last : letter(number / 26 - 1) + last;
    }

    /** The panel that carries a mirror, reaching beyond each of its edges. */
    static Piece panel(Piece mirror, double beyond) {
        return new Piece(
                mirror.name(),
                Piece.Use.PANEL,
                mirror.count(),
                grown(mirror.outline(), beyond).atOrigin(),
                mirror.bent(),
                List.of(),
                mirror.panels());
    }

    /** Film for a mirror, called so, reaching beyond each of its edges. */
    static Piece film(Piece mirror, String called, double beyond) {
        return new Piece(
                called + " for " + mirror.name(),
                Piece.Use.FILM,
                mirror.count(),
                grown(mirror.outline(), beyond).atOrigin(),
                mirror.bent(),
                List.of(),
                mirror.panels());
    }

    /** Each edge shifted outwards; corners where the shifted edges meet (plane geometry). */
    private static Polygon grown(Polygon shape, double by) {
        if (by == 0) {
            return shape;
        }
        List<Point> corners = new ArrayList<>();
        for (int k = 0; k < shape.size(); k++) {
            Point before = outwards(shape, k - 1);
            Point after = outwards(shape, k);
            double share = by / (1 + before.x() * after.x() + before.y() * after.y());
            Point at = shape.corner(k);
            corners.add(
                    new Point(at.x() + share * (before.x() + after.x()), at.y() + share * (before.y() + after.y())));
        }
        return new Polygon(corners);
    }

    /** Unit normal of the edge from corner k on. */
    private static Point outwards(Polygon shape, int k) {
        Point a = shape.corner(k);
        Point b = shape.corner(k + 1);
        double length = a.distance(b);
        return new Point((b.y() - a.y()) / length, (a.x() - b.x()) / length);
    }
}
