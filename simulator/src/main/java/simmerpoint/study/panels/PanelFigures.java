package simmerpoint.study.panels;

import simmerpoint.geometry.Vec;
import simmerpoint.sampling.Estimate;

/**
 * One panel: what it sends, what lands, and how to turn it so that the middle of its light meets that of all panels.
 *
 * @param number as on the pieces to cut, from 1
 * @param middle of its light, dish frame, m
 * @param incident sunlight on it, W
 * @param reflected what leaves it as a beam, W
 * @param caught what of that lands, W
 * @param share caught ÷ reflected
 * @param landing where the middle of its light crosses the plane of underside or disc, target frame, m
 * @param turn how to turn it
 * @param caughtTurned what lands once every panel is turned so, W
 */
public record PanelFigures(
        int number,
        Vec middle,
        double incident,
        double reflected,
        double caught,
        Estimate share,
        Vec landing,
        PanelTurn turn,
        double caughtTurned) {
    /** A gain below so many standard errors of what lands is none. */
    private static final double ERRORS = 2;

    /** What turning it brings, W. */
    public double gain() {
        return caughtTurned - caught;
    }

    /** Whether turning it surely brings light. */
    public boolean isWorthTurning() {
        return gain() > ERRORS * share.standardError() * reflected;
    }

    /** Distance from the axis, m. */
    public double fromAxisMetres() {
        return Math.hypot(middle.x(), middle.y());
    }
}
