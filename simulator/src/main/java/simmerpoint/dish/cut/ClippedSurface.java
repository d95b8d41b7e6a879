package simmerpoint.dish.cut;

import simmerpoint.dish.AlteredSurface;
import simmerpoint.dish.MirrorPoints;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.PanelZones;

/**
 * The surface of {@link Clipped}: the places of another surface, those beyond the rim without area. Of a region that does not go all
 * round only the angles over which it goes are sampled.
 */
final class ClippedSurface extends AlteredSurface {
    private static final int PROBES = 4096;
    private static final double ROUND = 2 * Math.PI;

    private final PlanRegion region;
    private final ClippedOutlines parts;
    private final double outlineArea;
    private final double apertureArea;
    /** First numbers of the other surface from here on, over so much. */
    private final double from;

    private final double span;

    ClippedSurface(MirrorSurface whole, PlanRegion region, ClippedOutlines parts, double apertureArea) {
        super(whole);
        this.region = region;
        this.parts = parts;
        this.apertureArea = apertureArea;
        if (parts.count() == 0) {
            throw new IllegalArgumentException("nothing of the mirror lies within the rim");
        }
        PlanRegion outline = region.common(PlanRegion.circle(whole.radius()));
        outlineArea = outline.areaWithin(whole.outlineCorners());
        double slack = region.spanRadians() < ROUND ? slack() : 0;
        span = Math.min(1, region.spanRadians() / ROUND + 2 * slack);
        from = span < 1 ? region.fromRadians() / ROUND - slack : 0;
    }

    /** How far a first number, times 2π, is at most from the angle of the place it gives, as a share of 2π. */
    private double slack() {
        double[] u = new double[PROBES];
        double[] v = new double[PROBES];
        for (int k = 0; k < PROBES; k++) {
            u[k] = (k + 0.5) / PROBES;
            v[k] = 0.9;
        }
        MirrorPoints places = new MirrorPoints(PROBES);
        original.fill(u, v, PROBES, places);
        double most = 0;
        for (int k = 0; k < PROBES; k++) {
            double off = Math.atan2(places.y[k], places.x[k]) / ROUND - u[k];
            most = Math.max(most, Math.abs(off - Math.rint(off)));
        }
        return most + 1.0 / PROBES;
    }

    @Override
    public double outlineArea() {
        return outlineArea;
    }

    @Override
    public double sampledArea() {
        return span * original.sampledArea();
    }

    @Override
    public double apertureArea() {
        return apertureArea;
    }

    @Override
    public int panels() {
        return parts.count();
    }

    @Override
    public int sectors() {
        return span < 1 ? 1 : original.sectors();
    }

    @Override
    public PanelZones zones() {
        return PanelZones.ONE;
    }

    @Override
    public double radius() {
        return Math.min(region.radiusMetres(), original.radius());
    }

    @Override
    public int panelAt(double x, double y) {
        int panel = region.contains(x, y) ? original.panelAt(x, y) : MirrorPoints.GAP;
        return panel >= 0 ? parts.number(panel) : MirrorPoints.GAP;
    }

    @Override
    public void fill(double[] u, double[] v, int n, MirrorPoints out) {
        original.fill(span < 1 ? window(u, n) : u, v, n, out);
        for (int i = 0; i < n; i++) {
            boolean inside = region.contains(out.x[i], out.y[i]);
            out.area[i] = inside ? out.area[i] * span : 0;
            out.panel[i] = inside && out.panel[i] >= 0 ? left(out.panel[i]) : ~standIn(out.panel[i]);
        }
    }

    private double[] window(double[] u, int n) {
        double[] within = new double[n];
        for (int i = 0; i < n; i++) {
            double at = from + span * u[i];
            within[i] = Math.min(at - Math.floor(at), Math.nextDown(1.0));
        }
        return within;
    }

    private int left(int panel) {
        int number = parts.number(panel);
        return number >= 0 ? number : ~standIn(panel);
    }

    /** The panel that is, or would be, there; where nothing is left of it any other. */
    private int standIn(int panel) {
        int would = panel >= 0 ? panel : panel == MirrorPoints.COVERED ? 0 : ~panel;
        int number = would < original.panels() ? parts.number(would) : MirrorPoints.GAP;
        return number >= 0 ? number : Math.floorMod(would, parts.count());
    }
}
