package simmerpoint.setup;

import java.util.Arrays;
import simmerpoint.dish.DishPlan;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Pose;
import simmerpoint.geometry.Rotation;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Plane;
import simmerpoint.pan.Target;
import simmerpoint.sun.Sunlight;

/**
 * Sun, dish and target placed in one frame, the <b>well-aimed frame</b>: the dish frame as it is when the dish points
 * straight at the sun. Its origin is the vertex, +z goes along the axis to the focus and on to the sun, +x to the dish's
 * upper edge, +y = z × x. The level pan's upward normal is (cos α, 0, sin α) there, α the sun's elevation.
 *
 * <p>The moves of the target's centre away from the focus: pull-back p (0, 0, p); slide s (−s·sin α, 0, s·cos α), which
 * keeps the focus in the pan's level plane; raise h (h·cos α, 0, h·sin α); side (0, side, 0).
 *
 * @param dish pose of the dish frame in the well-aimed frame; a turn rotates it about the mount
 * @param target pose of the target frame: origin in the centre of underside or disc, z its upward normal (a disc: away
 *     from the dish), y the dish's +y
 * @param sun direction from the ground to the sun's centre, in the well-aimed frame
 */
public record Setup(Pose dish, Pose target, Direction sun) {
    private static final int NUMBERS = 2 * (9 + 3) + 3;

    /**
     * Places dish and target.
     *
     * @param plan the dish, whose supposed focus is where the target stands without moves
     * @param sunlight its elevation is that of the well-aimed axis
     * @param aim drift and turn
     * @param target pan or disc
     * @param stand the moves of the target
     */
    public static Setup of(DishPlan plan, Sunlight sunlight, Aim aim, Target target, Stand stand) {
        double elevation = sunlight.elevationRadians();
        Vec mount = plan.mount(aim.mountMetres());
        Rotation turn = Rotation.fromZTo(Direction.tiltedFromZ(aim.turnUpRadians(), aim.turnSideRadians()));
        Pose dish = new Pose(turn, mount.minus(turn.apply(mount)));
        Vec middle = plan.supposedFocus().plus(offset(stand, elevation));
        if (aim.panCarriedBy() == Aim.PanCarrier.DISH) {
            middle = dish.toParent(middle);
        }
        Direction sun = Direction.tiltedFromZ(aim.driftUpRadians(), aim.driftSideRadians());
        return new Setup(dish, new Pose(leaning(lean(target, elevation)), middle), sun);
    }

    /** Centre of the target minus focus, in the well-aimed frame. */
    static Vec offset(Stand stand, double elevation) {
        double s = Math.sin(elevation);
        double c = Math.cos(elevation);
        double slide = stand.slideMetres();
        double raise = stand.raiseMetres();
        return new Vec(-slide * s + raise * c, stand.sideMetres(), stand.pullBackMetres() + slide * c + raise * s);
    }

    private static double lean(Target target, double elevation) {
        if (target instanceof Plane plane) {
            return plane.leanRadians();
        }
        return Math.PI / 2 - elevation;
    }

    /** The target's axes when its normal is tilted by {@code lean} from +z towards +x. */
    private static Rotation leaning(double lean) {
        double s = Math.sin(lean);
        double c = Math.cos(lean);
        return Rotation.ofAxes(new Direction(new Vec(c, 0, -s)), Direction.Y, new Direction(new Vec(s, 0, c)));
    }

    /** Whether all {@link #numbers} are the same. By hand: what Java makes up for a record costs a first answer some milliseconds. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Setup setup && Arrays.equals(numbers(), setup.numbers());
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(numbers());
    }

    /** Every number that says how things stand, for comparing. */
    public double[] numbers() {
        double[] all = new double[NUMBERS];
        int at = put(all, 0, dish);
        at = put(all, at, target);
        put(all, at, sun.vec());
        return all;
    }

    private static int put(double[] all, int at, Pose pose) {
        double[] rows = pose.rotation().rows();
        System.arraycopy(rows, 0, all, at, rows.length);
        return put(all, at + rows.length, pose.origin());
    }

    private static int put(double[] all, int at, Vec vec) {
        all[at] = vec.x();
        all[at + 1] = vec.y();
        all[at + 2] = vec.z();
        return at + 3;
    }

    /** Pose of the dish frame in the target frame. */
    public Pose dishInTarget() {
        return dish.in(target.inverse());
    }

    /** Direction to the sun's centre in the target frame. */
    public Direction sunInTarget() {
        return target.rotation().inverse().apply(sun);
    }

    /** Direction to the sun's centre in the dish frame. */
    public Direction sunInDish() {
        return dish.rotation().inverse().apply(sun);
    }

    /**
     * Projected area of lid and wall towards the sun's centre, m². A bare disc casts no shadow.
     */
    public static double silhouette(Pan pan, Direction sunInTarget) {
        double up = sunInTarget.vec().z();
        double level = Math.sqrt(Math.max(0, 1 - up * up));
        double r = pan.radiusMetres();
        return Math.PI * r * r * Math.max(0, up) + 2 * r * pan.heightMetres() * level;
    }
}
