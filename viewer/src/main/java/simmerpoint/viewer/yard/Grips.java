package simmerpoint.viewer.yard;

import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.geometry.Point2D;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.cooker.SideFrame;
import simmerpoint.drawing.cooker.SideScene;
import simmerpoint.pan.Pan;

/** Where the handles stand on the sheet: beside what they move, clear of each other, inside the sheet. */
final class Grips {
    private static final double OUT = 26;
    private static final double HALF = 16;
    private static final double STEP = 8;
    private static final int CIRCLES = 16;
    private static final int WAYS = 16;

    /** Those that must stand just there first. */
    private static final List<Handle> ORDER =
            List.of(Handle.SUN, Handle.SLIDE, Handle.PULL_BACK, Handle.TURN, Handle.RAISE);

    private Grips() {}

    /**
     * Middles of all handles: each beside what it moves, or as near to there as it covers no other handle and none of the boxes
     * that are taken.
     */
    static Map<Handle, Point2D> clear(SideScene scene, SideFrame frame, Box box, List<Box> taken) {
        Map<Handle, Point2D> places = new EnumMap<>(Handle.class);
        for (Handle handle : ORDER) {
            Point2D wanted = place(handle, scene, frame, box);
            places.put(
                    handle,
                    around(wanted)
                            .filter(p -> inside(p, box).equals(p) && free(p, places.values(), taken))
                            .findFirst()
                            .orElse(wanted));
        }
        return places;
    }

    /** A point, and points on wider and wider circles about it. */
    private static Stream<Point2D> around(Point2D wanted) {
        Stream<Point2D> circles = IntStream.rangeClosed(1, CIRCLES)
                .boxed()
                .flatMap(k -> IntStream.range(0, WAYS)
                        .mapToObj(way -> 2 * Math.PI * way / WAYS)
                        .map(turn -> wanted.add(STEP * k * Math.cos(turn), -STEP * k * Math.sin(turn))));
        return Stream.concat(Stream.of(wanted), circles);
    }

    private static boolean free(Point2D p, Collection<Point2D> others, List<Box> taken) {
        return others.stream().noneMatch(o -> o.distance(p) < 2 * HALF)
                && taken.stream().noneMatch(b -> covers(p, b));
    }

    /** Whether a handle there touches a box. */
    static boolean covers(Point2D p, Box box) {
        double x = Math.max(box.x(), Math.min(box.right(), p.getX()));
        double y = Math.max(box.y(), Math.min(box.bottom(), p.getY()));
        return p.distance(x, y) < HALF;
    }

    /** Middle of a handle beside what it moves, within a box, units. */
    static Point2D place(Handle handle, SideScene scene, SideFrame frame, Box box) {
        return inside(free(handle, scene, frame, box), box);
    }

    private static Point2D inside(Point2D p, Box box) {
        return new Point2D(
                Math.max(box.x() + HALF, Math.min(box.right() - HALF, p.getX())),
                Math.max(box.y() + HALF, Math.min(box.bottom() - HALF, p.getY())));
    }

    private static Point2D free(Handle handle, SideScene scene, SideFrame frame, Box box) {
        double halfWide = scene.scenario().target().radiusMetres() * frame.perMetre();
        double halfHigh = scene.scenario().target() instanceof Pan pan ? pan.heightMetres() / 2 * frame.perMetre() : 0;
        double panX = frame.x(scene.pan());
        double panY = frame.y(scene.pan()) - halfHigh;
        double elevation = scene.scenario().sun().elevationRadians();
        return switch (handle) {
            case PULL_BACK -> {
                double dx = Math.cos(elevation);
                double dy = Math.sin(elevation);
                double out = Math.min(halfWide / Math.max(1e-6, dx), halfHigh / Math.max(1e-6, dy)) + OUT;
                yield new Point2D(panX + out * dx, panY - out * dy);
            }
            case RAISE -> new Point2D(panX - halfWide - OUT, panY);
            case SLIDE -> new Point2D(frame.x(scene.mount()), frame.ground() + 18);
            case TURN -> beyond(scene, frame);
            case SUN -> {
                double[] sun = frame.sun(scene, box);
                yield new Point2D(sun[0], sun[1]);
            }
        };
    }

    /** A little out from the dish's upper edge. */
    private static Point2D beyond(SideScene scene, SideFrame frame) {
        Point2D rim = new Point2D(frame.x(scene.upperRim()), frame.y(scene.upperRim()));
        Point2D out = rim.subtract(frame.x(scene.middle()), frame.y(scene.middle()));
        return rim.add(out.normalize().multiply(OUT - 4));
    }

    /** How an arrow along the handle's way is turned from lying level, degrees clockwise. */
    static double turn(Handle handle, SideScene scene) {
        double elevation = Math.toDegrees(scene.scenario().sun().elevationRadians());
        return switch (handle) {
            case PULL_BACK -> -elevation;
            case RAISE -> -90;
            case SLIDE -> 0;
            case TURN -> -elevation;
            case SUN -> 90 - elevation;
        };
    }
}
