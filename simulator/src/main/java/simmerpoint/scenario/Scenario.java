package simmerpoint.scenario;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.built.BuildErrors;
import simmerpoint.dish.built.BuiltDish;
import simmerpoint.dish.built.Mask;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.dish.shape.ShapeErrors;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Target;
import simmerpoint.setup.Aim;
import simmerpoint.setup.Setup;
import simmerpoint.setup.SideView;
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
 * @param cooking what is cooked in; empty for a bare disc
 * @param site place, time and sky, if the file names them: elevation and beam of {@code sun} then come from them
 * @param heights of the mount and of a pan at which one can cook, above the ground
 * @param workmanship what the maker's tolerances do; {@code dish} and {@code mirror} are as planned, without them
 * @param mask what covers part of the mirror
 * @param shape how the whole dish differs from its plan
 */
public record Scenario(
        String title,
        DishPlan dish,
        Mirror mirror,
        Sunlight sun,
        Aim aim,
        Target target,
        Stand stand,
        Optional<CookingSetup> cooking,
        Optional<SiteConditions> site,
        GroundHeights heights,
        BuildErrors workmanship,
        Mask mask,
        ShapeErrors shape) {
    /** A scenario that is built exactly as planned. */
    public Scenario(
            String title,
            DishPlan dish,
            Mirror mirror,
            Sunlight sun,
            Aim aim,
            Target target,
            Stand stand,
            Optional<CookingSetup> cooking,
            Optional<SiteConditions> site,
            GroundHeights heights) {
        this(
                title,
                dish,
                mirror,
                sun,
                aim,
                target,
                stand,
                cooking,
                site,
                heights,
                BuildErrors.NONE,
                Mask.NONE,
                ShapeErrors.NONE);
    }

    /** A scenario that cooks as usual, if it has a pan, and no place or time. */
    public Scenario(String title, DishPlan dish, Mirror mirror, Sunlight sun, Aim aim, Target target, Stand stand) {
        this(title, dish, mirror, sun, aim, target, stand, usualCooking(target), Optional.empty(), GroundHeights.USUAL);
    }

    private static Optional<CookingSetup> usualCooking(Target target) {
        return target instanceof Pan pan ? Optional.of(CookingSetup.usual(pan)) : Optional.empty();
    }

    /** Sun, dish and target stood in one frame. */
    public Setup setup() {
        return Setup.of(dish, sun, aim, target, stand);
    }

    /** The upright plane through the sun, seen from the side. */
    public SideView sideView() {
        return new SideView(sun.elevationRadians(), dish.mount(aim.mountMetres()), heights.tripodHeightMetres());
    }

    /** The well-aimed dish and its pan stood on the ground. */
    public StandGeometry standGeometry() {
        return StandGeometry.of(dish, sun.elevationRadians(), aim.mountMetres(), heights.tripodHeightMetres(), stand);
    }

    /** How far the dish's supposed focus lies before its mount, along the axis, m. */
    public double armMetres() {
        return dish.supposedFocus().z() - dish.mount(aim.mountMetres()).z();
    }

    /** Height of the pan's underside above the ground, m. */
    public double panHeightMetres() {
        return StandGeometry.panHeight(
                dish, sun.elevationRadians(), aim.mountMetres(), heights.tripodHeightMetres(), stand);
    }

    /** The same with the target's middle elsewhere. */
    public Scenario withStand(Stand other) {
        return new Scenario(
                title, dish, mirror, sun, aim, target, other, cooking, site, heights, workmanship, mask, shape);
    }

    /** The same in other light. */
    public Scenario withSun(Sunlight other) {
        return new Scenario(
                title, dish, mirror, other, aim, target, stand, cooking, site, heights, workmanship, mask, shape);
    }

    /** The same with another dish. */
    public Scenario withDish(DishPlan other) {
        return new Scenario(
                title, other, mirror, sun, aim, target, stand, cooking, site, heights, workmanship, mask, shape);
    }

    /** The same with another mirror. */
    public Scenario withMirror(Mirror other) {
        return new Scenario(
                title, dish, other, sun, aim, target, stand, cooking, site, heights, workmanship, mask, shape);
    }

    /** The same with a change to the mirrors of the dish and of all its zones. */
    public Scenario withMirrors(UnaryOperator<Mirror> change) {
        return withMirror(change.apply(mirror)).withDish(dish.withMirrors(change));
    }

    /** The same with a change to the mirror of one zone of the dish. */
    public Scenario withMirror(String zone, UnaryOperator<Mirror> change) {
        return withDish(dish.withZone(zone, z -> z.withMirror(mirror, change)));
    }

    /** The mirror of one zone of the dish. */
    public Mirror mirror(String zone) {
        return dish.zone(zone).mirror().orElse(mirror);
    }

    /** The same for another target; what is cooked in stays the same. */
    public Scenario withTarget(Target other) {
        return new Scenario(
                title, dish, mirror, sun, aim, other, stand, cooking, site, heights, workmanship, mask, shape);
    }

    /** The same, aimed otherwise. */
    public Scenario withAim(Aim other) {
        return new Scenario(
                title, dish, mirror, sun, other, target, stand, cooking, site, heights, workmanship, mask, shape);
    }

    /** The same with another pan, water and weather. */
    public Scenario withCooking(Optional<CookingSetup> other) {
        return new Scenario(
                title, dish, mirror, sun, aim, target, stand, other, site, heights, workmanship, mask, shape);
    }

    /** The same, built more or less truly. */
    public Scenario withWorkmanship(BuildErrors other) {
        return new Scenario(title, dish, mirror, sun, aim, target, stand, cooking, site, heights, other, mask, shape);
    }

    /** The same with part of the mirror covered. */
    public Scenario withMask(Mask other) {
        return new Scenario(
                title, dish, mirror, sun, aim, target, stand, cooking, site, heights, workmanship, other, shape);
    }

    /** The same with a dish in another shape. */
    public Scenario withShape(ShapeErrors other) {
        return new Scenario(
                title, dish, mirror, sun, aim, target, stand, cooking, site, heights, workmanship, mask, other);
    }

    /** The mirrors of all zones as planned, in their order; one where the dish has no zones. */
    public List<Mirror> mirrors() {
        return dish.mirrors(mirror);
    }

    /** The dish with its mirror as this maker builds it: what light is cast on. */
    public BuiltDish built() {
        return workmanship.build(dish, mirror).covered(mask).shaped(shape, sun.elevationRadians());
    }
}
