package simmerpoint.safety.field;

import simmerpoint.geometry.Pose;
import simmerpoint.geometry.Vec;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.SideView;

/**
 * The ground frame of one cooker, as its maker measures: x level towards the sun that the dish is aimed at, y level to the right of
 * whoever faces that sun, z the height above the ground; the origin lies under the mount. Right is −y of a right-handed frame
 * about these axes, so no vector product may be taken in it. The same as {@link SideView}, with the third direction.
 *
 * @param side the upright plane through the axis
 */
public record Yard(SideView side) {
    /** The yard of {@code scenario}. */
    public static Yard of(Scenario scenario) {
        return new Yard(scenario.sideView());
    }

    /** A point of the well-aimed frame. */
    public Vec place(Vec wellAimed) {
        SideView.Place seen = side.of(wellAimed);
        return new Vec(seen.towardsSunMetres(), wellAimed.y(), seen.heightMetres());
    }

    /** A direction of the well-aimed frame. */
    public Vec direction(Vec wellAimed) {
        return place(wellAimed).minus(place(Vec.ZERO));
    }

    /** A point of the yard in the well-aimed frame; the map keeps lengths, so its inverse is its transpose. */
    public Vec wellAimed(Vec place) {
        Vec from = place.minus(place(Vec.ZERO));
        return new Vec(
                from.dot(direction(new Vec(1, 0, 0))),
                from.dot(direction(new Vec(0, 1, 0))),
                from.dot(direction(new Vec(0, 0, 1))));
    }

    /** From a frame with this pose in the well-aimed frame into the yard. */
    FrameMap from(Pose pose) {
        return new FrameMap(v -> place(pose.toParent(v)));
    }
}
