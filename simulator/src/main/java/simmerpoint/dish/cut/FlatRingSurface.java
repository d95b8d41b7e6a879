package simmerpoint.dish.cut;

import java.util.ArrayList;
import java.util.List;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.Profile;
import simmerpoint.dish.shape.Sectors;
import simmerpoint.geometry.Point;
import simmerpoint.geometry.Vec;

/**
 * Sectors × rings of flat trapezoids with all corners on the curve of the ribs, treated as one closed polyhedral bowl: the
 * planes of neighbouring panels meet in straight edges. A gap removes half its width from every edge shared by two
 * panels. Panel number = sector · rings + ring.
 */
final class FlatRingSurface implements MirrorSurface {
    private final DishPlan plan;
    private final Sectors sectors;
    private final RingBorders borders;
    /** Per ring: distance of the inner edge from the axis, its height, slope along the bisector. */
    private final double[] innerX;

    private final double[] innerZ;
    private final double[] slope;
    /** Per ring: 1/√(1 + slope²) = z of the normal. */
    private final double[] normalZ;
    /** Per ring: what the gap takes off the half width, and the range of x that is left. */
    private final double[] sideTrim;

    private final double[] firstX;
    private final double[] lastX;

    FlatRingSurface(DishPlan plan, FlatRings cut) {
        this.plan = plan;
        Profile profile = plan.profile();
        sectors = new Sectors(cut.sectors());
        borders = cut.borders(plan);
        int n = borders.rings();
        innerX = new double[n];
        innerZ = new double[n];
        slope = new double[n];
        normalZ = new double[n];
        sideTrim = new double[n];
        firstX = new double[n];
        lastX = new double[n];
        for (int j = 0; j < n; j++) {
            layRing(j, profile);
        }
    }

    private void layRing(int j, Profile profile) {
        double r0 = borders.radius[j];
        double r1 = borders.radius[j + 1];
        double outerX = r1 * sectors.cosHalf;
        innerX[j] = r0 * sectors.cosHalf;
        innerZ[j] = profile.height(r0);
        slope[j] = (profile.height(r1) - innerZ[j]) / (outerX - innerX[j]);
        double stretch = Math.sqrt(1 + slope[j] * slope[j]);
        normalZ[j] = 1 / stretch;
        double half = plan.gapMetres() / 2;
        double edgeRun = sectors.tanHalf / stretch;
        sideTrim[j] = half * Math.sqrt(1 + edgeRun * edgeRun);
        firstX[j] = j == 0 ? innerX[j] : innerX[j] + half / stretch;
        lastX[j] = j == borders.rings() - 1 ? outerX : outerX - half / stretch;
    }

    @Override
    public double outlineArea() {
        return sectors.polygonArea(plan.radiusMetres());
    }

    @Override
    public List<Point> outlineCorners() {
        return sectors.corners(plan.radiusMetres());
    }

    @Override
    public double apertureArea() {
        double sum = 0;
        for (int j = 0; j < borders.rings(); j++) {
            double from = Math.max(firstX[j], sideTrim[j] / sectors.tanHalf);
            if (lastX[j] > from) {
                sum += (lastX[j] - from) * (sectors.tanHalf * (lastX[j] + from) - 2 * sideTrim[j]);
            }
        }
        return sum * sectors.count;
    }

    @Override
    public int panels() {
        return sectors.count * borders.rings();
    }

    @Override
    public int sectors() {
        return sectors.count;
    }

    @Override
    public double[] ringBorders() {
        return borders.shares();
    }

    @Override
    public double steepestSlope() {
        double max = 0;
        for (double s : slope) {
            max = Math.max(max, s);
        }
        return Math.atan(max);
    }

    @Override
    public double radius() {
        return plan.radiusMetres();
    }

    @Override
    public double heightAt(double x, double y) {
        int k = sectors.at(x, y);
        double along = x * sectors.cos[k] + y * sectors.sin[k];
        double radii = Math.min(1, along / (sectors.cosHalf * plan.radiusMetres()));
        int j = borders.ringAt(radii * radii);
        return innerZ[j] + slope[j] * (along - innerX[j]);
    }

    @Override
    public int panelAt(double x, double y) {
        int k = sectors.at(x, y);
        double along = x * sectors.cos[k] + y * sectors.sin[k];
        double across = y * sectors.cos[k] - x * sectors.sin[k];
        double radii = along / (sectors.cosHalf * plan.radiusMetres());
        if (radii > 1) {
            return MirrorPoints.GAP;
        }
        int j = borders.ringAt(radii * radii);
        return isOnMirror(along, across, j) ? k * borders.rings() + j : MirrorPoints.GAP;
    }

    private boolean isOnMirror(double along, double across, int ring) {
        return Math.abs(across) <= along * sectors.tanHalf - sideTrim[ring]
                && along >= firstX[ring]
                && along <= lastX[ring];
    }

    /** Three loops, each short enough for its numbers to stay in registers (measured: three quarters of the time of one). */
    @Override
    public void fill(double[] u, double[] v, int n, MirrorPoints out) {
        double rimX = plan.radiusMetres() * sectors.cosHalf;
        double[] along = out.nz;
        double[] across = out.ny;
        for (int i = 0; i < n; i++) {
            along[i] = rimX * Math.sqrt(v[i]);
        }
        placeInSectors(u, along, n, across, out);
        layOnRings(v, n, along, across, out);
        double planArea = outlineArea();
        for (int i = 0; i < n; i++) {
            out.area[i] = planArea / out.nz[i];
        }
    }

    /** Fills the plan places, how far each is across its sector, and, into {@link MirrorPoints#panel}, its sector. */
    private void placeInSectors(double[] u, double[] along, int n, double[] across, MirrorPoints out) {
        double tanHalf = sectors.tanHalf;
        int count = sectors.count;
        for (int i = 0; i < n; i++) {
            double place = u[i] * count;
            int k = (int) place;
            double x = along[i];
            double y = (2 * (place - k) - 1) * x * tanHalf;
            across[i] = y;
            out.x[i] = x * sectors.cos[k] - y * sectors.sin[k];
            out.y[i] = x * sectors.sin[k] + y * sectors.cos[k];
            out.panel[i] = k;
        }
    }

    private void layOnRings(double[] v, int n, double[] along, double[] across, MirrorPoints out) {
        double hubX = innerX[0];
        double tanHalf = sectors.tanHalf;
        int rings = borders.rings();
        for (int i = 0; i < n; i++) {
            double x = along[i];
            int k = out.panel[i];
            if (x < hubX) {
                hubPoint(i, ~(k * rings), out);
                continue;
            }
            int j = borders.ringAt(v[i]);
            boolean onMirror = Math.abs(across[i]) <= x * tanHalf - sideTrim[j] && x >= firstX[j] && x <= lastX[j];
            out.panel[i] = onMirror ? k * rings + j : ~(k * rings + j);
            double nz = normalZ[j];
            double inward = -slope[j] * nz;
            out.z[i] = innerZ[j] + slope[j] * (x - innerX[j]);
            out.nx[i] = inward * sectors.cos[k];
            out.ny[i] = inward * sectors.sin[k];
            out.nz[i] = nz;
        }
    }

    /** The hub is a flat polygon at the height of the innermost corners. */
    private void hubPoint(int i, int panel, MirrorPoints out) {
        out.z[i] = innerZ[0];
        out.nx[i] = 0;
        out.ny[i] = 0;
        out.nz[i] = 1;
        out.panel[i] = panel;
    }

    /** Corners of a panel, counter-clockwise from its hub side, without the gap; none if the gap leaves nothing. */
    List<Vec> edge(int panel) {
        int j = panel % borders.rings();
        double from = Math.max(firstX[j], sideTrim[j] / sectors.tanHalf);
        double to = lastX[j];
        if (!(to > from)) {
            return List.of();
        }
        int k = panel / borders.rings();
        double inner = Math.max(0, from * sectors.tanHalf - sideTrim[j]);
        double outer = to * sectors.tanHalf - sideTrim[j];
        double low = innerZ[j] + slope[j] * (from - innerX[j]);
        double high = innerZ[j] + slope[j] * (to - innerX[j]);
        List<Vec> corners = new ArrayList<>(4);
        corners.add(sectors.point(k, from, -inner, low));
        corners.add(sectors.point(k, to, -outer, high));
        corners.add(sectors.point(k, to, outer, high));
        if (inner > 0) {
            corners.add(sectors.point(k, from, inner, low));
        }
        return corners;
    }
}
