package simmerpoint.study.aim;

import java.util.OptionalDouble;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Aim;

/**
 * Aiming ahead: the dish is turned beyond the sun, the way the sun goes, so that the spot drifts through the middle of
 * the pan instead of away from it. Where the watts fall alike on both sides, twice the interval costs no more at its ends.
 *
 * <p>How far (derived here, small angles, vertex ray, f the focal length, b the distance of the mount behind the vertex):
 * when the sun drifts by ε, the ray that hits the vertex leaves it turned by ε, and lands f·ε off, against the sun's way.
 * When the dish turns by τ, the vertex walks b·τ and its normal turns by τ, the ray by 2τ: it lands (2f + b)·τ off, the way
 * of the turn. A pan on its own stand stays, so both cancel in the middle of the interval, when the sun has drifted by ε/2
 * of its drift ε, if (2f + b)·τ = f·ε/2: the lead is f/(2f + b) of the sun's half interval. A pan that the dish carries has
 * walked (f + b)·τ itself; then f·τ = f·ε/2, and the lead is all of it.
 *
 * <p>Light from the rim of a deep dish is moved farther by a drift than the vertex ray is, and a turn adds (f + b)·τ to that
 * all the same, so that for a pan on its own stand the lead comes a little short: a dish of 1.2 m across and 0.8 m focal
 * length gains 1.8 times the interval instead of 2 (traced). Interval and means are traced, so they hold that.
 *
 * @param share of the sun's half interval
 * @param upRadians of the lead, rad: dish too high for now
 * @param sideRadians of the lead, rad: dish too far right for now
 * @param interval with this lead, really traced
 */
public record AimLead(double share, double upRadians, double sideRadians, AimInterval interval) {
    /** A share beyond this is no use: the mount lies so far before the vertex that a turn hardly moves the spot. */
    private static final double MOST = 2;

    /** The lead, rad. */
    public double radians() {
        return Math.hypot(upRadians, sideRadians);
    }

    /** Share of the sun's half interval; empty where the dish turns about a point that makes it senseless. */
    public static OptionalDouble share(Scenario scenario) {
        Aim aim = scenario.aim();
        if (aim.panCarriedBy() == Aim.PanCarrier.DISH) {
            return OptionalDouble.of(1);
        }
        double f = scenario.dish().focalLengthMetres();
        double share = f / (f + scenario.armMetres());
        return share > 0 && share <= MOST ? OptionalDouble.of(share) : OptionalDouble.empty();
    }

    /**
     * How far the tip of a stick's shadow lies from its foot, m, when the dish is off the sun by {@code radians}; the stick
     * stands on the dish along its axis. The tip lies the way the dish is off: a dish too high throws it towards its upper
     * edge.
     */
    public static double shadow(double stickMetres, double radians) {
        return stickMetres * Math.tan(radians);
    }
}
