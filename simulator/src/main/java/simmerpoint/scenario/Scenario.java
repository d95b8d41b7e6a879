package simmerpoint.scenario;

import java.util.Optional;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.built.BuildErrors;
import simmerpoint.dish.built.BuiltDish;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Target;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Setup;
import simmerpoint.setup.Stand;
import simmerpoint.setup.StandGeometry;
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
 * @param kitchen what is cooked in; empty for a bare disc
 * @param outdoors place, time and sky, if the file names them: elevation and beam of {@code sun} then come from them
 * @param ground heights above the ground
 * @param workmanship what the maker's tolerances do; {@code dish} and {@code mirror} are as planned, without them
 */
public record Scenario(
        String title,
        DishPlan dish,
        Mirror mirror,
        Sunlight sun,
        Aim aim,
        Target target,
        Stand stand,
        Optional<Kitchen> kitchen,
        Optional<Outdoors> outdoors,
        Ground ground,
        BuildErrors workmanship) {
    /** A scenario that is built exactly as planned. */
    public Scenario(
            String title,
            DishPlan dish,
            Mirror mirror,
            Sunlight sun,
            Aim aim,
            Target target,
            Stand stand,
            Optional<Kitchen> kitchen,
            Optional<Outdoors> outdoors,
            Ground ground) {
        this(title, dish, mirror, sun, aim, target, stand, kitchen, outdoors, ground, BuildErrors.NONE);
    }

    /** A scenario with a usual kitchen about its pan, if it has one, and no place or time. */
    public Scenario(String title, DishPlan dish, Mirror mirror, Sunlight sun, Aim aim, Target target, Stand stand) {
        this(title, dish, mirror, sun, aim, target, stand, usualKitchen(target), Optional.empty(), Ground.USUAL);
    }

    private static Optional<Kitchen> usualKitchen(Target target) {
        return target instanceof Pan pan ? Optional.of(Kitchen.usual(pan)) : Optional.empty();
    }

    /** Sun, dish and target stood in one frame. */
    public Setup setup() {
        return Setup.of(dish.focalLengthMetres(), sun, aim, target, stand);
    }

    /** The well-aimed dish and its pan stood on the ground. */
    public StandGeometry standGeometry() {
        return StandGeometry.of(dish, sun.elevationRadians(), aim.mountMetres(), ground.tripodHeightMetres(), stand);
    }

    /** Height of the pan's underside above the ground, m. */
    public double panHeightMetres() {
        return StandGeometry.panHeight(
                dish, sun.elevationRadians(), aim.mountMetres(), ground.tripodHeightMetres(), stand);
    }

    /** The same with the target's middle elsewhere. */
    public Scenario withStand(Stand other) {
        return new Scenario(title, dish, mirror, sun, aim, target, other, kitchen, outdoors, ground, workmanship);
    }

    /** The same in other light. */
    public Scenario withSun(Sunlight other) {
        return new Scenario(title, dish, mirror, other, aim, target, stand, kitchen, outdoors, ground, workmanship);
    }

    /** The same with another dish. */
    public Scenario withDish(DishPlan other) {
        return new Scenario(title, other, mirror, sun, aim, target, stand, kitchen, outdoors, ground, workmanship);
    }

    /** The same with another mirror. */
    public Scenario withMirror(Mirror other) {
        return new Scenario(title, dish, other, sun, aim, target, stand, kitchen, outdoors, ground, workmanship);
    }

    /** The same for another target; what is cooked in stays the same. */
    public Scenario withTarget(Target other) {
        return new Scenario(title, dish, mirror, sun, aim, other, stand, kitchen, outdoors, ground, workmanship);
    }

    /** The same, aimed otherwise. */
    public Scenario withAim(Aim other) {
        return new Scenario(title, dish, mirror, sun, other, target, stand, kitchen, outdoors, ground, workmanship);
    }

    /** The same, built more or less truly. */
    public Scenario withWorkmanship(BuildErrors other) {
        return new Scenario(title, dish, mirror, sun, aim, target, stand, kitchen, outdoors, ground, other);
    }

    /** The dish with its mirror as this maker builds it: what light is cast on. */
    public BuiltDish built() {
        return workmanship.build(dish, mirror);
    }
}
