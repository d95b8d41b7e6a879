package simmerpoint.setup;

import simmerpoint.dish.DishPlan;
import simmerpoint.geometry.Vec;
import simmerpoint.sun.SunMotion;

/**
 * How far the focus moves away from a pan on its own stand between two aimings of the dish. Between two
 * aimings dish and pan stand still and the spot moves over the pan by f times the sun's angle ε (vertex ray). When the dish
 * is aimed again it turns about its mount, so the focus moves by (f + b)·ε and the pan's position, pulled back by p, by
 * (f + b + p)·ε; the tripod or the pan must be moved by as much. A focus at (x, z) from a mount beside the axis is moved by ε·(z, −x)
 * by a turn up. A pan carried by the dish moves along (derived here).
 *
 * @param minutes between two aimings
 * @param sunRadians the sun's angle in that time
 * @param focusMetres how far the focus moves at each aiming, (f + b)·ε; 0 if the dish carries the pan
 * @param levelMetres how far tripod or pan is moved over the ground at each aiming; 0 if the dish carries the pan
 * @param riseMetres how far the pan's position rises at each aiming, below 0 if it sinks; 0 if the dish carries the pan
 */
public record FocusTravel(
        double minutes, double sunRadians, double focusMetres, double levelMetres, double riseMetres) {
    /**
     * For the sun's motion at one instant.
     *
     * @param dish its focus and its middle
     * @param aim its mount and pan carrier
     * @param minutes between two aimings
     * @param pullBackMetres of the pan
     * @param elevationRadians of the sun
     * @param motion of the sun
     */
    public static FocusTravel of(
            DishPlan dish, Aim aim, double minutes, double pullBackMetres, double elevationRadians, SunMotion motion) {
        Vec arm = dish.supposedFocus().minus(dish.mount(aim.mountMetres()));
        double angle = minutes * Math.hypot(motion.upRadiansPerMinute(), motion.sideRadiansPerMinute());
        if (aim.panCarriedBy() == Aim.PanCarrier.DISH) {
            return new FocusTravel(minutes, angle, 0, 0, 0);
        }
        double out = arm.z() + pullBackMetres;
        double up = minutes * motion.upRadiansPerMinute();
        double side = minutes * motion.sideRadiansPerMinute();
        double sine = Math.sin(elevationRadians);
        double cosine = Math.cos(elevationRadians);
        return new FocusTravel(
                minutes,
                angle,
                Math.hypot(arm.length() * up, arm.z() * side),
                Math.hypot((out * sine + arm.x() * cosine) * up, out * side),
                (out * cosine - arm.x() * sine) * up);
    }
}
