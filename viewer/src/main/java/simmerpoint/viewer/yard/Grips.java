package simmerpoint.viewer.yard;

import javafx.geometry.Point2D;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.cooker.SideFrame;
import simmerpoint.drawing.cooker.SideScene;
import simmerpoint.pan.Pan;

/** Where the handles stand on the sheet: beside what they move, clear of each other, inside the sheet. */
final class Grips {
    private static final double OUT = 26;
    private static final double HALF = 16;

    private Grips() {}

    /** Middle of a handle in a box, px. */
    static Point2D place(Handle handle, SideScene scene, SideFrame frame, Box box) {
        Point2D p = free(handle, scene, frame, box);
        return new Point2D(
                Math.max(HALF, Math.min(box.right() - HALF, p.getX())),
                Math.max(HALF, Math.min(box.bottom() - HALF, p.getY())));
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
        Point2D out = rim.subtract(frame.x(scene.vertex()), frame.y(scene.vertex()));
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
