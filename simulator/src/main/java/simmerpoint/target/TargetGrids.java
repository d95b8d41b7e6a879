package simmerpoint.target;

import simmerpoint.pan.Pan;
import simmerpoint.pan.Target;

/**
 * The grids of one target.
 *
 * @param radius of underside or disc, m
 * @param peakDiscRadius m
 * @param plane grid in the plane of underside or disc, null where no maps are wanted
 * @param wall grid of the wall, null for a bare disc
 * @param lid grid of the lid, null for a bare disc or where no maps are wanted
 */
record TargetGrids(double radius, double peakDiscRadius, Grid plane, Grid wall, Grid lid) {
    /** The peak disc is never larger than the target nor smaller than this share of its radius. */
    private static final double LEAST_PEAK_SHARE = 0.02;

    /** For watts by face alone: only bands of the wall, to separate its parts below and above the water line. */
    static TargetGrids forWatts(Target target) {
        double radius = target.radiusMetres();
        Grid wall = target instanceof Pan pan ? Grid.ofWallBands(radius, pan.heightMetres()) : null;
        return new TargetGrids(radius, radius, null, wall, null);
    }

    static TargetGrids of(Target target, double askedPeakRadius) {
        double radius = target.radiusMetres();
        double peak = Math.max(LEAST_PEAK_SHARE * radius, Math.min(radius, askedPeakRadius));
        Grid plane = Grid.ofPlane(radius, peak);
        if (target instanceof Pan pan) {
            return new TargetGrids(radius, peak, plane, Grid.ofWall(radius, pan.heightMetres()), Grid.ofLid(radius));
        }
        return new TargetGrids(radius, peak, plane, null, null);
    }
}
