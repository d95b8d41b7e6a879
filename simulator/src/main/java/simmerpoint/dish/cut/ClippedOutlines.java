package simmerpoint.dish.cut;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import simmerpoint.dish.FlatPanel;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.PanelOutline;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Polygon;
import simmerpoint.geometry.Vec;

/** What a rim leaves of each panel. Those that are left are numbered anew, in their order. */
final class ClippedOutlines {
    /** A panel is flat if its corners are no farther off its plane, m. */
    private static final double FLAT = 1e-9;

    /** New edges of bent panels have points at least this close, m. */
    private static final double STEP = 1e-2;

    private final MirrorSurface surface;
    private final PlanRegion region;
    /** What is left of each panel: none, itself, or one part or more, numbered as before. */
    private final List<List<PanelOutline>> left = new ArrayList<>();

    private final List<PanelOutline> whole;
    private final int[] number;
    private final int count;

    ClippedOutlines(List<PanelOutline> whole, MirrorSurface surface, PlanRegion region, boolean onlyWhole) {
        this.whole = whole;
        this.surface = surface;
        this.region = region;
        number = new int[surface.panels()];
        Arrays.fill(number, MirrorPoints.GAP);
        int next = 0;
        for (PanelOutline outline : whole) {
            List<PanelOutline> parts = isCovered(outline) ? List.of(outline) : onlyWhole ? List.of() : clip(outline);
            left.add(parts);
            if (!parts.isEmpty()) {
                number[outline.panel()] = next++;
            }
        }
        count = next;
    }

    /** New number of a panel; below 0 if nothing is left of it. */
    int number(int panel) {
        return number[panel];
    }

    /** Number of panels that are left. */
    int count() {
        return count;
    }

    private boolean isCovered(PanelOutline outline) {
        return region.covers(plan(outline.edge()));
    }

    private static List<Point> plan(List<Vec> edge) {
        return edge.stream().map(p -> new Point(p.x(), p.y())).toList();
    }

    private List<PanelOutline> clip(PanelOutline outline) {
        if (outline.hole().isEmpty()) {
            return parts(outline, region, List.of());
        }
        List<Point> hole = plan(outline.hole());
        return region.covers(hole)
                ? parts(outline, region, outline.hole())
                : parts(outline, region.without(hole), List.of());
    }

    private List<PanelOutline> parts(PanelOutline outline, PlanRegion kept, List<Vec> hole) {
        UnaryOperator<List<Point>> dense = isFlat(outline) ? corners -> corners : ClippedOutlines::dense;
        Function<Point, Vec> lift =
                isFlat(outline) ? inPlane(outline) : p -> new Vec(p.x(), p.y(), surface.heightAt(p.x(), p.y()));
        return kept.clip(plan(outline.edge())).stream()
                .map(Polygon::corners)
                .map(corners -> new PanelOutline(
                        outline.panel(), dense.apply(corners).stream().map(lift).toList(), hole))
                .toList();
    }

    private static List<Point> dense(List<Point> corners) {
        List<Point> all = new ArrayList<>();
        for (int k = 0; k < corners.size(); k++) {
            Point a = corners.get(k);
            Point b = corners.get((k + 1) % corners.size());
            int steps = (int) Math.max(1, Math.ceil(a.distance(b) / STEP - 1e-6));
            for (int step = 0; step < steps; step++) {
                double share = (double) step / steps;
                all.add(new Point(a.x() + share * (b.x() - a.x()), a.y() + share * (b.y() - a.y())));
            }
        }
        return all;
    }

    private static boolean isFlat(PanelOutline outline) {
        Vec normal = normal(outline);
        Vec middle = Vec.mean(outline.edge());
        return outline.edge().stream().allMatch(p -> Math.abs(p.minus(middle).dot(normal)) < FLAT);
    }

    private static Vec normal(PanelOutline outline) {
        Vec area = Vec.area(outline.edge());
        return area.times(1 / area.length());
    }

    private static Function<Point, Vec> inPlane(PanelOutline outline) {
        Vec normal = normal(outline);
        Vec middle = Vec.mean(outline.edge());
        return p -> {
            double off = normal.x() * (p.x() - middle.x()) + normal.y() * (p.y() - middle.y());
            return new Vec(p.x(), p.y(), middle.z() - off / normal.z());
        };
    }

    /** All that is left. */
    List<PanelOutline> outlines() {
        return left.stream()
                .flatMap(List::stream)
                .map(part -> new PanelOutline(number[part.panel()], part.edge(), part.hole()))
                .toList();
    }

    /**
     * The flat shapes of all that is left.
     *
     * @param flat those of whole panels by their number before
     * @param cut makes that of a part, numbered as before
     */
    List<FlatPanel> flat(Map<Integer, FlatPanel> flat, Function<PanelOutline, FlatPanel> cut) {
        List<FlatPanel> all = new ArrayList<>();
        for (int k = 0; k < left.size(); k++) {
            PanelOutline before = whole.get(k);
            for (PanelOutline part : left.get(k)) {
                FlatPanel shape = flat.get(part.panel());
                if (shape != null) {
                    FlatPanel piece = part.equals(before) ? shape : cut.apply(part);
                    all.add(new FlatPanel(number[part.panel()], piece.edge(), piece.bent()));
                }
            }
        }
        return all;
    }

    /** Area of all that is left in plan, m²: {@code plain}, that of all panels before, times the share of their outlines that is left. */
    double area(double plain) {
        PlanRegion all = PlanRegion.circle(2 * surface.radius());
        double before = 0;
        double after = 0;
        for (int k = 0; k < left.size(); k++) {
            double area = areaWithin(all, whole.get(k));
            boolean same = left.get(k).size() == 1 && left.get(k).get(0).equals(whole.get(k));
            before += area;
            after += same ? area : left.get(k).isEmpty() ? 0 : areaWithin(region, whole.get(k));
        }
        return plain * after / before;
    }

    private static double areaWithin(PlanRegion region, PanelOutline outline) {
        double hole = outline.hole().isEmpty() ? 0 : region.areaWithin(plan(outline.hole()));
        return region.areaWithin(plan(outline.edge())) - hole;
    }
}
