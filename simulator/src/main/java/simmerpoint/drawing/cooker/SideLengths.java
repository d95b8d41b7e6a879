package simmerpoint.drawing.cooker;

import simmerpoint.answer.words.FigureFormat;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.setup.SideView.Place;
import simmerpoint.units.UnitSystem;

/** The lengths in a side view that a builder measures, and its scale. */
final class SideLengths {
    /** How far down from the ground lengths and their words reach, units. */
    static final double BELOW = 56;

    private static final double SIDE = 14;
    private static final double BAR = 110;
    private static final double BAR_BESIDE_WORDS = 60;
    private static final double LEAST_BAR = 22;

    /** Left of the bar, what is written beside it, and half of the length's own words, units. */
    private static final double BAR_WORDS = 100;

    private final SideScene scene;
    private final SideFrame frame;
    private final UnitSystem units;
    private final FigureFormat figures;
    private final Box box;
    private final Dimensions lines;

    SideLengths(SideScene scene, SideFrame frame, UnitSystem units, Canvas canvas, Box box) {
        this.scene = scene;
        this.frame = frame;
        this.units = units;
        this.box = box;
        figures = new FigureFormat(units);
        lines = new Dimensions(canvas, box);
    }

    private String length(double metres) {
        return figures.length(metres, 2 + (Math.abs(metres) >= 1 ? 1 : 0));
    }

    void draw() {
        double mountX = frame.x(scene.mount());
        double panX = frame.x(scene.pan());
        mount(mountX);
        pan(panX);
        between(mountX, panX);
        clearance();
        scaleBar(Math.min(mountX, panX), Math.max(mountX, panX));
    }

    private void mount(double mountX) {
        double dish = scene.profile().stream().mapToDouble(frame::x).min().orElse(box.x());
        double legs = mountX - scene.legs() * frame.perMetre();
        double y = frame.y(scene.mount());
        double left = Math.max(box.x() + SIDE, Math.min(legs, dish) - SIDE);
        lines.extension(left, y, mountX, y);
        lines.upright(left, frame.ground(), y, length(scene.scenario().heights().tripodHeightMetres()), false);
    }

    private void pan(double panX) {
        double y = frame.y(scene.pan());
        if (y < frame.ground() - 6) {
            double rays = scene.rays().stream()
                    .mapToDouble(r -> frame.x(r.from()))
                    .max()
                    .orElseGet(() -> frame.sun(scene, box)[0]);
            double right = Math.min(box.right() - SIDE, Math.max(panX + 60, rays + SIDE));
            double half = scene.scenario().target().radiusMetres() * frame.perMetre();
            lines.extension(panX + half, y, right, y);
            lines.upright(right, frame.ground(), y, length(scene.geometry().panHeightMetres()), true);
        }
    }

    /** From the tripod's middle to under the pan. */
    private void between(double mountX, double panX) {
        if (Math.abs(panX - mountX) > 24) {
            double y = frame.ground() + 36;
            lines.extension(mountX, frame.ground() + 30, mountX, y);
            lines.extension(panX, frame.ground(), panX, y);
            String length = length(Math.abs(scene.geometry().panDistanceMetres()));
            lines.across(Math.min(mountX, panX), Math.max(mountX, panX), y, length);
        }
    }

    /** From the ground up to the mirror's lowest point. */
    private void clearance() {
        Place lowest = scene.lowest();
        double y = frame.y(lowest);
        if (frame.ground() - y > 10) {
            lines.upright(frame.x(lowest), frame.ground(), y + 2, length(lowest.heightMetres()), true);
        }
    }

    /** On the side where more room is, and no longer than leaves room for the length between tripod and pan. */
    private void scaleBar(double left, double right) {
        double usual = Math.min(scene.trouble().isPresent() ? BAR_BESIDE_WORDS : BAR, box.width() / 4);
        double free = (left + right) / 2 - box.x() - BAR_WORDS;
        double most = free >= LEAST_BAR ? Math.min(usual, free) : usual;
        boolean atRight = left - box.x() < box.right() - right;
        double x = atRight ? box.right() - SIDE : box.x() + SIDE;
        lines.scaleBar(x, box.bottom() - 12, frame.perMetre(), most, atRight, units);
    }
}
