package simmerpoint.drawing.cooker;

import java.util.List;
import java.util.Optional;
import simmerpoint.answer.words.FigureFormat;
import simmerpoint.dish.CutTrait;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Circle;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Path;
import simmerpoint.drawing.RoundBox;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;
import simmerpoint.drawing.chart.Legend;
import simmerpoint.pan.Pan;
import simmerpoint.setup.Aim;
import simmerpoint.setup.SideView.Place;
import simmerpoint.units.UnitSystem;

/**
 * The cooker from its side, to scale: ground, tripod, dish, pan, sun and a few rays, with the lengths that a builder measures, and what
 * its lines mean. Tripod and stand are sketched: the scenario does not describe them.
 */
public final class SideDrawing implements Drawing {
    private static final double EARTH = 6;
    private static final double FAINT = 0.75;
    private static final double SIDE = 10;

    /** Below the words in the upper left corner of the window. */
    private static final double CORNER = 42;

    private final SideScene scene;
    private final UnitSystem units;
    private final FigureFormat figures;
    private final Optional<SideFrame> held;
    private final Legend legend;

    private SideDrawing(SideScene scene, UnitSystem units, Optional<SideFrame> held) {
        this.scene = scene;
        this.units = units;
        this.held = held;
        figures = new FigureFormat(units);
        legend = legend(scene);
    }

    /** Height of the words on the lines of a scene, at the foot of a drawing of that width. */
    public static double keyHeight(SideScene scene, double width, TextMetrics metrics) {
        return legend(scene).height(width - 2 * SIDE, metrics);
    }

    private static Legend legend(SideScene scene) {
        return scene.lit().isEmpty() ? SideLight.legend(scene) : HazardBands.legend();
    }

    /** A scene in a frame that holds all of it. */
    public static SideDrawing of(SideScene scene, UnitSystem units) {
        return new SideDrawing(scene, units, Optional.empty());
    }

    /** A scene while somebody moves things in it: in a frame that stays, and with what is wrong in words. */
    public static SideDrawing live(SideScene scene, UnitSystem units, SideFrame frame) {
        return new SideDrawing(scene, units, Optional.of(frame));
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        return SideFrame.height(scene, width) + keyHeight(scene, width, metrics);
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        double keyed = keyHeight(scene, box.width(), canvas.metrics());
        Box above = new Box(box.x(), box.y(), box.width(), box.height() - keyed);
        SideFrame frame = held.orElseGet(() -> SideFrame.around(scene, above, 0));
        ground(canvas, frame, above);
        stands(canvas, frame);
        SideLight light = new SideLight(canvas, scene, frame);
        canvas.fade(FAINT, light::sunlight);
        dish(canvas, frame);
        axis(canvas, frame);
        light.reflected();
        target(canvas, frame);
        focus(canvas, frame);
        light.sun(figures.degrees(scene.scenario().sun().elevationRadians()), above);
        new SideLengths(scene, frame, units, canvas, above).draw();
        legend.draw(canvas, new Box(box.x() + SIDE, above.bottom(), box.width() - 2 * SIDE, keyed));
        if (held.isPresent()) {
            scene.trouble().ifPresent(words -> trouble(words, canvas, frame, above));
        }
    }

    private static void ground(Canvas canvas, SideFrame frame, Box box) {
        canvas.draw(Style.GROUND, new Box(box.x(), frame.ground(), box.width(), EARTH));
        canvas.line(Style.GROUND_EDGE, box.x(), frame.ground(), box.right(), frame.ground());
    }

    private void stands(Canvas canvas, SideFrame frame) {
        double x = frame.x(scene.mount());
        double y = frame.y(scene.mount());
        double leg = scene.legs() * frame.perMetre();
        canvas.line(Style.STAND, x, y, frame.x(scene.middle()), frame.y(scene.middle()));
        for (double foot : new double[] {x - leg, x, x + leg}) {
            canvas.line(Style.STAND, x, y, foot, frame.ground());
        }
        canvas.draw(Style.MOUNT, new Circle(x, y, 3));
        boolean carried = scene.scenario().aim().panCarriedBy() == Aim.PanCarrier.DISH;
        double panX = frame.x(scene.pan());
        double holdX = carried ? frame.x(scene.upperRim()) : panX;
        double holdY = carried ? frame.y(scene.upperRim()) : frame.ground();
        canvas.line(Style.HOLDER, panX, frame.y(scene.pan()), holdX, holdY);
    }

    /** The outside of the nearer half, and the section along the ribs that point up and down. */
    private void dish(Canvas canvas, SideFrame frame) {
        boolean bowl = scene.scenario().dish().cut().has(CutTrait.PARABOLOID);
        if (scene.panels().isEmpty()) {
            canvas.draw(Style.SHADE_2, path(scene.profile(), frame, true));
        } else {
            List<SideScene.Panel> panels = scene.panels();
            PanelShades.draw(
                    canvas,
                    panels.stream().map(SideScene.Panel::shade).toList(),
                    panels.stream()
                            .map(p -> PanelShades.outline(p.edge(), p.hole(), v -> point(frame, v)))
                            .toList(),
                    bowl);
        }
        if (bowl) {
            canvas.draw(Style.PROFILE, path(scene.profile(), frame, false));
        }
    }

    private static double[] point(SideFrame frame, Place place) {
        return new double[] {frame.x(place), frame.y(place)};
    }

    private static Path path(List<Place> places, SideFrame frame, boolean closed) {
        return Path.through(places.stream().map(p -> point(frame, p)).toList(), closed);
    }

    private void axis(Canvas canvas, SideFrame frame) {
        double x1 = frame.x(scene.vertex());
        double y1 = frame.y(scene.vertex());
        double dx = frame.x(scene.focus()) - x1;
        double dy = frame.y(scene.focus()) - y1;
        if (scene.besideAxis()) {
            string(canvas, frame, scene.profile().get(0));
            string(canvas, frame, scene.upperRim());
            return;
        }
        canvas.line(Style.AXIS, x1, y1, x1 + dx, y1 + dy);
        if (held.isEmpty()) {
            double length = scene.scenario().dish().focalLengthMetres();
            along(canvas, new double[] {x1, y1}, dx, dy, "focal length ", length);
        }
    }

    /** A string from an end of the rim to the focus, by which that is found. */
    private void string(Canvas canvas, SideFrame frame, Place end) {
        double[] from = point(frame, end);
        double[] to = point(frame, scene.focus());
        canvas.line(Style.AXIS, from[0], from[1], to[0], to[1]);
        double length = Math.hypot(
                scene.focus().towardsSunMetres() - end.towardsSunMetres(),
                scene.focus().heightMetres() - end.heightMetres());
        boolean rightwards = to[0] >= from[0];
        double[] left = rightwards ? from : to;
        double[] right = rightwards ? to : from;
        along(canvas, left, right[0] - left[0], right[1] - left[1], "", length);
    }

    /** A length along a line, clear of the focus. */
    private void along(Canvas canvas, double[] from, double dx, double dy, String name, double metres) {
        double along = Math.hypot(dx, dy);
        String length = figures.length(metres);
        Text whole = Text.at(0, 0, name + length).in(TextStyle.NOTE).middle();
        boolean room = canvas.metrics().width(whole) < along - 16;
        double share = 0.5 - 9 / along;
        canvas.write((room ? whole : whole.words(length))
                .moved(from[0] + share * dx, from[1] + share * dy - 3)
                .turned(Math.toDegrees(Math.atan2(dy, dx))));
    }

    private void target(Canvas canvas, SideFrame frame) {
        double x = frame.x(scene.pan());
        double y = frame.y(scene.pan());
        boolean wrong = scene.panTrouble().isPresent();
        if (!(scene.scenario().target() instanceof Pan pan)) {
            canvas.draw(wrong ? Style.WARNING : Style.DISC, path(scene.disc(), frame, true));
            name(canvas, x, y - 8, scene.noun());
            return;
        }
        double half = pan.radiusMetres() * frame.perMetre();
        double high = pan.heightMetres() * frame.perMetre();
        canvas.draw(
                wrong ? Style.TARGET_WRONG : Style.TARGET,
                new RoundBox(new Box(x - half, y - high, 2 * half, high), 2));
        for (List<Place> bar : scene.bars()) {
            canvas.line(
                    Style.STAND, frame.x(bar.get(0)), frame.y(bar.get(0)), frame.x(bar.get(1)), frame.y(bar.get(1)));
        }
        canvas.line(wrong ? Style.WARNING : Style.RIM, x - half - 3, y - high, x + half + 3, y - high);
        canvas.draw(Style.SOLID, new RoundBox(new Box(x - 6, y - high - 5, 12, 4), 1.5));
        name(
                canvas,
                x,
                y - high - 9,
                "pan " + figures.length(pan.diameterMetres()) + " × " + figures.length(pan.heightMetres()));
    }

    private void name(Canvas canvas, double x, double y, String words) {
        if (held.isEmpty()) {
            canvas.write(Text.at(x, y, words).in(TextStyle.NOTE).middle());
        }
    }

    /** A ring with a cross, seen on the pan too. */
    private void focus(Canvas canvas, SideFrame frame) {
        double x = frame.x(scene.focus());
        double y = frame.y(scene.focus());
        canvas.draw(Style.FOCUS, new Circle(x, y, 5));
        canvas.draw(Style.TICK, Path.open(x - 8, y, x + 8, y).and(Path.open(x, y - 8, x, y + 8)));
        if (held.isPresent()) {
            boolean apart = Math.hypot(x - frame.x(scene.pan()), y - frame.y(scene.pan())) > 14;
            canvas.write(Text.at(x + 10, y + (apart ? 14 : 19), "focus").in(TextStyle.NOTE));
        }
    }

    /** Under everything that is measured, or else in the corner beside the sun, where nothing stands. */
    private void trouble(String words, Canvas canvas, SideFrame frame, Box box) {
        double below = frame.ground() + SideLengths.BELOW;
        Callout wide = new Callout(words, Math.min(Callout.MOST, box.width() - 40), true);
        if (below + wide.height(canvas.metrics()) <= box.bottom() - 3) {
            wide.draw(canvas, box.right(), below, box);
        } else {
            double room =
                    Math.max(2 * SideLight.LABEL, Math.min(Callout.MOST, frame.x(scene.sun()) - SideLight.LABEL - 30));
            new Callout(words, Math.min(room, box.width() - 40), true).draw(canvas, box.x(), box.y() + CORNER, box);
        }
    }
}
