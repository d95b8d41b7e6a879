package simmerpoint.scenario;

import simmerpoint.dish.DishPlan;
import simmerpoint.dish.Mirror;
import simmerpoint.pan.Target;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Stand;
import simmerpoint.sun.Sunlight;

/**
 * Everything a scenario file says, checked and in SI.
 *
 * @param title one line for headings; may be empty
 * @param dish the dish as planned
 * @param mirror what covers it
 * @param sun the light
 * @param aim how it is aimed
 * @param target a pan or a bare disc
 * @param stand where its middle stands
 */
public record Scenario(String title, DishPlan dish, Mirror mirror, Sunlight sun, Aim aim, Target target, Stand stand) {
    /** The same with the target's middle elsewhere. */
    public Scenario withStand(Stand other) {
        return new Scenario(title, dish, mirror, sun, aim, target, other);
    }
}
