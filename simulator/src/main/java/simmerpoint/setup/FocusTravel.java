package simmerpoint.setup;

import simmerpoint.dish.DishPlan;
import simmerpoint.pan.Target;
import simmerpoint.sun.SunMotion;

/**
 * How the focus walks off a pan that has its own stand, and how often the dish is to be aimed again. Between two aimings
 * dish and pan stand still and the spot drifts over the pan by f times the sun's angle ε (the vertex ray). When the dish
 * is aimed again it turns about its mount, so the focus itself walks by (f + b)·ε and the pan's place, pulled back by p,
 * by (f + b + p)·ε: so far the tripod or the pan must be moved. A pan carried by the dish goes along (derived here).
 *
 * <p>The interval follows from a plain tolerance: {@link #TOLERANCE} of the pan's radius. What that costs in watts is not
 * asked here.
 *
 * @param minutes between two aimings
 * @param sunRadians what the sun walks in that time
 * @param focusMetres what the focus walks at each new aiming, (f + b)·ε; 0 if the dish carries the pan
 * @param levelMetres how far tripod or pan is moved over the ground at each new aiming; 0 if the dish carries the pan
 * @param riseMetres how far the pan's place rises at each new aiming, below 0 if it sinks; 0 if the dish carries the pan
 */
public record FocusTravel(
        double minutes, double sunRadians, double focusMetres, double levelMetres, double riseMetres) {
    /** So much of the pan's radius the spot may walk before the dish is aimed again (this project's choice). */
    public static final double TOLERANCE = 0.25;

    /**
     * The walk for the sun's motion at one instant.
     *
     * @param dish its focal length
     * @param aim its mount, and who carries the pan
     * @param target its radius sets the tolerance
     * @param pullBackMetres of the pan
     * @param elevationRadians of the sun
     * @param motion of the sun
     */
    public static FocusTravel of(
            DishPlan dish, Aim aim, Target target, double pullBackMetres, double elevationRadians, SunMotion motion) {
        double f = dish.focalLengthMetres();
        double angle = TOLERANCE * target.radiusMetres() / f;
        double minutes = motion.minutesFor(angle);
        if (aim.panCarriedBy() == Aim.PanCarrier.DISH) {
            return new FocusTravel(minutes, angle, 0, 0, 0);
        }
        double arm = f + aim.mountMetres();
        double place = (arm + pullBackMetres) * minutes;
        double up = place * motion.upRadiansPerMinute();
        double side = place * motion.sideRadiansPerMinute();
        return new FocusTravel(
                minutes,
                angle,
                Math.abs(arm) * angle,
                Math.hypot(up * Math.sin(elevationRadians), side),
                up * Math.cos(elevationRadians));
    }
}
