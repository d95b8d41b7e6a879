package simmerpoint.dish.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.PanelOutline;
import simmerpoint.dish.Profile;
import simmerpoint.dish.shape.Sectors;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Polygon;
import simmerpoint.geometry.Vec;
import simmerpoint.sampling.RootFinder;

/**
 * Panels bent along the ribs and straight from rib to rib: each a cylinder in its sector's frame, as high at x as the ribs are at
 * r = x/cos β, β = π/n; on a parabola z = x²/(4 f cos²β) (derived here: the ribs are z = r²/4f at y = ±x·tan β). A gap takes half its width
 * off the two long edges. Panel number = sector.
 */
final class BentStripSurface implements MirrorSurface {
    private static final int EDGE_STEPS = 24;
    private static final int FLAT_STEPS = 120;

    private final DishPlan plan;
    private final Sectors sectors;
    private final Profile strip;
    private final double rimX;
    private final double hubX;

    BentStripSurface(DishPlan plan, BentStrips cut) {
        this.plan = plan;
        sectors = new Sectors(cut.sectors());
        strip = plan.profile().stretched(sectors.cosHalf);
        rimX = plan.radiusMetres() * sectors.cosHalf;
        hubX = plan.hubMetres() / 2 * sectors.cosHalf;
    }

    @Override
    public double outlineArea() {
        return sectors.polygonArea(plan.radiusMetres());
    }

    /** Half the width of the mirror at x, after the gap: the edge is drawn in square to itself, along the surface. */
    private double halfWidth(double x) {
        double slope = strip.slope(x);
        double edgeRun2 = sectors.tanHalf * sectors.tanHalf / (1 + slope * slope);
        return x * sectors.tanHalf - plan.gapMetres() / 2 * Math.sqrt(1 + edgeRun2);
    }

    @Override
    public List<Point> outlineCorners() {
        return sectors.corners(plan.radiusMetres());
    }

    @Override
    public double apertureArea() {
        if (plan.gapMetres() == 0) {
            return outlineArea() - sectors.polygonArea(plan.hubMetres() / 2);
        }
        double widest = halfWidth(rimX);
        if (!(widest > 0)) {
            return 0;
        }
        double area = new IterativeLegendreGaussIntegrator(16, 1e-12, 1e-14)
                .integrate(100_000, this::halfWidth, firstX(), rimX);
        return 2 * sectors.count * area;
    }

    @Override
    public int panels() {
        return sectors.count;
    }

    @Override
    public int sectors() {
        return sectors.count;
    }

    @Override
    public double steepestSlope() {
        return Math.atan(strip.slope(rimX));
    }

    @Override
    public double radius() {
        return plan.radiusMetres();
    }

    @Override
    public double heightAt(double x, double y) {
        int k = sectors.at(x, y);
        double along = x * sectors.cos[k] + y * sectors.sin[k];
        return strip.height(along);
    }

    @Override
    public int panelAt(double x, double y) {
        int k = sectors.at(x, y);
        double along = x * sectors.cos[k] + y * sectors.sin[k];
        double across = y * sectors.cos[k] - x * sectors.sin[k];
        boolean there = along >= hubX && along <= rimX && Math.abs(across) <= halfWidth(along);
        return there ? k : MirrorPoints.GAP;
    }

    @Override
    public void fill(double[] u, double[] v, int n, MirrorPoints out) {
        double planArea = outlineArea();
        double hubZ = strip.height(hubX);
        for (int i = 0; i < n; i++) {
            double place = u[i] * sectors.count;
            int k = (int) place;
            double x = rimX * Math.sqrt(v[i]);
            double y = (2 * (place - k) - 1) * x * sectors.tanHalf;
            double cos = sectors.cos[k];
            double sin = sectors.sin[k];
            boolean hub = x < hubX;
            double slope = hub ? 0 : strip.slope(x);
            double nz = 1 / Math.sqrt(1 + slope * slope);
            out.x[i] = x * cos - y * sin;
            out.y[i] = x * sin + y * cos;
            out.z[i] = hub ? hubZ : strip.height(x);
            out.nx[i] = -slope * nz * cos;
            out.ny[i] = -slope * nz * sin;
            out.nz[i] = nz;
            out.area[i] = planArea / nz;
            out.panel[i] = hub || Math.abs(y) > halfWidth(x) ? ~k : k;
        }
    }

    /** The edge of a strip without the gap, its long sides by points on them; none if the gap leaves nothing. */
    List<Vec> edge(int panel) {
        if (!(halfWidth(rimX) > 0)) {
            return List.of();
        }
        double from = firstX();
        List<Vec> right = new ArrayList<>();
        List<Vec> left = new ArrayList<>();
        for (int i = 0; i <= EDGE_STEPS; i++) {
            double x = from + (rimX - from) * i / EDGE_STEPS;
            double half = Math.max(0, halfWidth(x));
            double z = strip.height(x);
            right.add(sectors.point(panel, x, -half, z));
            if (half > 0) {
                left.add(0, sectors.point(panel, x, half, z));
            }
        }
        right.addAll(left);
        return right;
    }

    /**
     * A strip laid flat, its long edges by points on them: along its middle it is as long as the curve, across as wide as in the
     * dish. Unrolling a cylinder keeps all lengths (any text on differential geometry). Empty if the gap leaves nothing.
     */
    Optional<Polygon> laidFlat() {
        if (!(halfWidth(rimX) > 0)) {
            return Optional.empty();
        }
        double from = firstX();
        List<Point> right = new ArrayList<>();
        List<Point> left = new ArrayList<>();
        for (int i = 0; i <= FLAT_STEPS; i++) {
            double x = from + (rimX - from) * i / FLAT_STEPS;
            double half = Math.max(0, halfWidth(x));
            double along = strip.arcLength(x);
            right.add(new Point(half, along));
            if (half > 0) {
                left.add(0, new Point(-half, along));
            }
        }
        right.addAll(left);
        return Optional.of(new Polygon(right));
    }

    /** A part of a strip laid flat in the same way. */
    Polygon unrolled(PanelOutline outline) {
        int k = outline.panel();
        return new Polygon(outline.edge().stream()
                .map(p -> new Point(
                        p.x() * sectors.sin[k] - p.y() * sectors.cos[k],
                        strip.arcLength(p.x() * sectors.cos[k] + p.y() * sectors.sin[k])))
                .toList());
    }

    /** Where the mirror begins: at the hub, or where the gaps on both sides meet. */
    private double firstX() {
        return halfWidth(hubX) < 0 ? RootFinder.to(1e-12, 200).find(this::halfWidth, hubX, rimX) : hubX;
    }
}
