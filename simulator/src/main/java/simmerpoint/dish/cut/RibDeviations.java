package simmerpoint.dish.cut;

import java.util.Arrays;
import java.util.List;
import simmerpoint.dish.RibLayout;
import simmerpoint.sampling.MonotoneCubic;

/**
 * How far a surface ruled between measured ribs lies above the one ruled between planned ribs. Heights of ribs are joined by smooth
 * curves; on ribs with straight parts by straight lines between the parts' ends.
 */
final class RibDeviations {
    private static final double NEAR_AXIS = 1e-6;
    private static final int PROBES = 100;

    private final Sectors sectors;
    private final RibLayout layout;
    private final MonotoneCubic[] curves;

    RibDeviations(RibLayout layout, List<Double> radii, List<List<Double>> heights) {
        sectors = new Sectors(layout.sectors());
        this.layout = layout;
        double[] x = array(radii);
        curves = heights.stream().map(rib -> new MonotoneCubic(x, array(rib))).toArray(MonotoneCubic[]::new);
        if (curves.length != layout.sectors()) {
            throw new IllegalArgumentException(curves.length + " ribs measured of " + layout.sectors());
        }
    }

    private static double[] array(List<Double> numbers) {
        return numbers.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /**
     * A difference of two surfaces.
     *
     * @param height m
     * @param slopeX its slope along x of the dish frame
     * @param slopeY along y
     */
    record Deviation(double height, double slopeX, double slopeY) {
        private static final Deviation NONE = new Deviation(0, 0, 0);
    }

    /** At a place in plan. Sector k lies between ribs k and k + 1; t runs from 0 at the first to 1 at the second. */
    Deviation at(double x, double y) {
        double turn = Math.atan2(y, x) / (2 * sectors.halfAngle);
        int k = Math.floorMod((int) Math.floor(turn), sectors.count);
        double cos = sectors.cos[k];
        double sin = sectors.sin[k];
        double along = x * cos + y * sin;
        double across = y * cos - x * sin;
        if (!(along > NEAR_AXIS)) {
            return Deviation.NONE;
        }
        double r = along / sectors.cosHalf;
        double t = 0.5 * (across / (along * sectors.tanHalf) + 1);
        int next = (k + 1) % sectors.count;
        double first = height(k, r);
        double step = height(next, r) - first;
        double slopeAcross = step / (2 * along * sectors.tanHalf);
        double slopeAlong =
                ((1 - t) * slope(k, r) + t * slope(next, r)) / sectors.cosHalf - slopeAcross * across / along;
        return new Deviation(
                first + t * step, slopeAlong * cos - slopeAcross * sin, slopeAlong * sin + slopeAcross * cos);
    }

    private double height(int rib, double r) {
        if (layout.curved()) {
            return curves[rib].at(r);
        }
        int k = part(r);
        double from = layout.borders()[k];
        return curves[rib].at(from) + slope(rib, r) * (r - from);
    }

    private double slope(int rib, double r) {
        if (layout.curved()) {
            return curves[rib].slopeAt(r);
        }
        int k = part(r);
        double from = layout.borders()[k];
        double to = layout.borders()[k + 1];
        return (curves[rib].at(to) - curves[rib].at(from)) / (to - from);
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
    double slopeDifference(int rib) {
        double most = 0;
        for (int probe = 0; probe < PROBES; probe++) {
            double r = radius(probe);
            most = Math.max(most, Math.abs(slope((rib + 1) % sectors.count, r) - slope(rib, r)));
        }
        return most;
    }

    /** Greatest slope that the deviation adds, at the ribs and midway. */
    double steepest() {
        double most = 0;
        for (int k = 0; k < sectors.count; k++) {
            for (int probe = 0; probe < PROBES; probe++) {
                for (double turn : new double[] {1e-6, 1, 2 - 1e-6}) {
                    double angle = (2 * k + turn) * sectors.halfAngle;
                    Deviation at = at(radius(probe) * Math.cos(angle), radius(probe) * Math.sin(angle));
                    most = Math.max(most, Math.hypot(at.slopeX(), at.slopeY()));
                }
            }
        }
        return most;
    }
}
