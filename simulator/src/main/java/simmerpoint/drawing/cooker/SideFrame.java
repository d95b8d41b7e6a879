package simmerpoint.drawing.cooker;

import simmerpoint.drawing.Box;
import simmerpoint.pan.Pan;
import simmerpoint.setup.SideView.Place;

/**
 * Where places of a scene come on the drawing.
 *
 * @param left x of {@code first}, units
 * @param ground y of the ground, units
 * @param first level place at {@code left}, m
 * @param perMetre units per metre
 */
public record SideFrame(double left, double ground, double first, double perMetre) {
    private static final double LEFT = 42;
    private static final double RIGHT = 40;
    private static final double TOP = 36;
    private static final double BELOW = 64;
    private static final double TALLEST = 420;
    private static final double LEAST = 1e-3;
    private static final double EDGE = 8;
    private static final double SUN_TOP = 34;
    private static final double SUN_SIDE = 18;

    /** A frame in which everything of a scene is seen, so many units kept free along the upper edge for words. */
    public static SideFrame around(SideScene scene, Box room, double above) {
        double width = room.width();
        double height = room.height();
        double[] box = everything(scene);
        double across = Math.max(LEAST, box[1] - box[0]);
        double tall = Math.max(LEAST, box[3] - box[2]);
        double perMetre = Math.max(1, Math.min((width - LEFT - RIGHT) / across, (height - TOP - above - BELOW) / tall));
        double spareAcross = width - LEFT - RIGHT - across * perMetre;
        double spareTall = height - TOP - above - BELOW - tall * perMetre;
        double ground = room.y() + TOP + above + spareTall * 0.6 + box[3] * perMetre;
        return new SideFrame(room.x() + LEFT + spareAcross / 2, ground, box[0], perMetre);
    }

    /** The height that suits a scene on a drawing of that width. */
    static double height(SideScene scene, double width) {
        double[] box = everything(scene);
        double shape = (box[3] - box[2]) / Math.max(LEAST, box[1] - box[0]);
        return Math.min(TALLEST, (width - LEFT - RIGHT) * shape) + TOP + BELOW;
    }

    private static double[] everything(SideScene scene) {
        double[] box = things(scene);
        scene.rays().forEach(ray -> include(box, ray.from(), 0));
        include(box, scene.sun(), 0.02);
        return box;
    }

    /** Left, right, lowest and highest place of dish, pan and tripod, m. */
    private static double[] things(SideScene scene) {
        double half = scene.scenario().target().radiusMetres();
        double high = scene.scenario().target() instanceof Pan pan ? pan.heightMetres() : 0;
        double[] box = {Double.MAX_VALUE, -Double.MAX_VALUE, 0, -Double.MAX_VALUE};
        scene.panels().forEach(p -> p.edge().forEach(e -> include(box, e, 0)));
        scene.profile().forEach(p -> include(box, p, 0));
        include(box, scene.pan(), half);
        include(box, new Place(scene.pan().towardsSunMetres(), scene.pan().heightMetres() + high), half);
        include(box, scene.focus(), 0);
        include(box, scene.mount(), scene.legs());
        scene.lit().forEach(place -> include(box, place, 0));
        return box;
    }

    /** Whether dish, pan and tripod can be seen; sun and rays come from beyond the drawing anyway. */
    public boolean holds(SideScene scene, Box room) {
        double[] box = things(scene);
        boolean across = x(box[0]) >= room.x() + EDGE && x(box[1]) <= room.right() - EDGE;
        boolean upright = y(box[3]) >= room.y() + EDGE
                && y(box[2]) <= room.bottom() - EDGE
                && ground <= room.bottom() - BELOW + EDGE;
        return across && upright;
    }

    /** Where the sun is drawn: out along the way to it, but within a box: x and y. */
    public double[] sun(SideScene scene, Box room) {
        double top = room.y() + SUN_TOP;
        double right = room.right() - SUN_SIDE;
        double fromX = x(scene.focus());
        double fromY = y(scene.focus());
        double x = x(scene.sun());
        double y = y(scene.sun());
        double share = 1;
        if (y < top && fromY > top) {
            share = Math.min(share, (fromY - top) / (fromY - y));
        }
        if (x > right && fromX < right) {
            share = Math.min(share, (right - fromX) / (x - fromX));
        }
        return new double[] {fromX + share * (x - fromX), fromY + share * (y - fromY)};
    }

    private static void include(double[] box, Place place, double half) {
        box[0] = Math.min(box[0], place.towardsSunMetres() - half);
        box[1] = Math.max(box[1], place.towardsSunMetres() + half);
        box[2] = Math.min(box[2], place.heightMetres());
        box[3] = Math.max(box[3], place.heightMetres());
    }

    private double x(double towardsSun) {
        return left + (towardsSun - first) * perMetre;
    }

    private double y(double height) {
        return ground - height * perMetre;
    }

    /** Where a place lies from left to right. */
    public double x(Place place) {
        return x(place.towardsSunMetres());
    }

    /** Where a place lies from above. */
    public double y(Place place) {
        return y(place.heightMetres());
    }

    /** The place at a point of the drawing. */
    public Place at(double x, double y) {
        return new Place(first + (x - left) / perMetre, (ground - y) / perMetre);
    }
}
