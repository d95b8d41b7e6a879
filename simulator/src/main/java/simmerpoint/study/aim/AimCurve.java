package simmerpoint.study.aim;

import java.util.List;
import simmerpoint.sampling.Estimate;

/**
 * Watts against one sort of aiming error along one line through dead on.
 *
 * @param turn whether the dish is turned; else the sun drifts
 * @param side whether to the right (above 0) and left; else up (above 0) and down
 * @param points in rising order of their angle; aims that cannot be are left out
 */
public record AimCurve(boolean turn, boolean side, List<Point> points) {
    /** Keeps its own list. */
    public AimCurve {
        points = List.copyOf(points);
    }

    /**
     * One traced aim.
     *
     * @param radians off dead on
     * @param watts cooking power; of a bare disc, caught
     */
    public record Point(double radians, Estimate watts) {}
}
