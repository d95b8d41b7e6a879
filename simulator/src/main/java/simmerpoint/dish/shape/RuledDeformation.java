package simmerpoint.dish.shape;

import java.util.Arrays;
import simmerpoint.dish.RibLayout;

/**
 * How far a surface ruled between ribs as they are lies above the one ruled between planned ribs; on ribs with straight parts these are
 * joined by straight lines between the parts' ends.
 */
public final class RuledDeformation implements Deformation {
    private static final double NEAR_AXIS = 1e-6;
    private static final int PROBES = 100;

    private final Sectors sectors;
    private final RibLayout layout;
    private final RibHeights ribs;

    /** Of ribs that lie so far above their plan. */
    public RuledDeformation(RibLayout layout, RibHeights ribs) {
        sectors = new Sectors(layout.sectors());
        this.layout = layout;
        this.ribs = ribs;
    }

    /** Sector k lies between ribs k and k + 1; t runs from 0 at the first to 1 at the second. */
    @Override
    public void add(double x, double y, Displacement to) {
        int k = sectors.at(x, y);
        double cos = sectors.cos[k];
        double sin = sectors.sin[k];
        double along = x * cos + y * sin;
        double across = y * cos - x * sin;
        if (!(along > NEAR_AXIS)) {
            return;
        }
        double r = along / sectors.cosHalf;
        double t = 0.5 * (across / (along * sectors.tanHalf) + 1);
        int next = (k + 1) % sectors.count;
        RibHeights.RibPlace first = at(k, r);
        RibHeights.RibPlace second = at(next, r);
        double step = second.height() - first.height();
        double slopeAcross = step / (2 * along * sectors.tanHalf);
        double slopeAlong =
                ((1 - t) * first.slope() + t * second.slope()) / sectors.cosHalf - slopeAcross * across / along;
        to.add(first.height() + t * step, slopeAlong * cos - slopeAcross * sin, slopeAlong * sin + slopeAcross * cos);
    }

    private RibHeights.RibPlace at(int rib, double r) {
        if (layout.curved()) {
            return ribs.at(rib, r);
        }
        int k = part(r);
        double from = layout.borders()[k];
        double to = layout.borders()[k + 1];
        double height = ribs.at(rib, from).height();
        double slope = (ribs.at(rib, to).height() - height) / (to - from);
        return new RibHeights.RibPlace(height + slope * (r - from), slope);
    }

    /** Which straight part a distance from the axis belongs to. */
    private int part(double r) {
        int found = Arrays.binarySearch(layout.borders(), r);
        int k = found >= 0 ? found : -found - 2;
        return Math.max(0, Math.min(layout.borders().length - 2, k));
    }

    private double radius(int probe) {
        double hub = layout.borders()[0];
        double rim = layout.borders()[layout.borders().length - 1];
        return hub + (rim - hub) * (probe + 0.5) / PROBES;
    }

    /** Greatest difference of the slopes of a rib and the next one. */
    public double slopeDifference(int rib) {
        double most = 0;
        for (int probe = 0; probe < PROBES; probe++) {
            double r = radius(probe);
            most = Math.max(
                    most,
                    Math.abs(at((rib + 1) % sectors.count, r).slope()
                            - at(rib, r).slope()));
        }
        return most;
    }

    /** Greatest slope that it adds, at the ribs and midway. */
    @Override
    public double steepest(double hub, double rim) {
        double most = 0;
        for (int k = 0; k < sectors.count; k++) {
            for (int probe = 0; probe < PROBES; probe++) {
                for (double turn : new double[] {1e-6, 1, 2 - 1e-6}) {
                    double angle = (2 * k + turn) * sectors.halfAngle;
                    Displacement at = at(radius(probe) * Math.cos(angle), radius(probe) * Math.sin(angle));
                    most = Math.max(most, Math.hypot(at.slopeX(), at.slopeY()));
                }
            }
        }
        return most;
    }
}
