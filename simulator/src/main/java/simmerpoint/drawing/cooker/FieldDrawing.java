package simmerpoint.drawing.cooker;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Circle;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Path;
import simmerpoint.drawing.Raster;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;
import simmerpoint.geometry.Vec;
import simmerpoint.pan.Plane;
import simmerpoint.safety.YardRisks;
import simmerpoint.safety.field.FieldBox;
import simmerpoint.safety.field.YardLight;
import simmerpoint.safety.risk.Hazard;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.SideView.Place;
import simmerpoint.units.UnitSystem;

/**
 * The light in the upright plane through the dish's axis, under the cooker drawn from its side and the outline of a grown-up who
 * stands as near as is safe. Places are coloured by the worst that light of mirrors and sun together does there.
 */
public final class FieldDrawing implements Drawing {
    private static final double PERSON = 1.7;
    private static final double HALF_PERSON = 0.28;
    private static final double ABOVE = 0.1;
    private static final double FOCUS = 0.02;
    private static final double LEFT = 16;

    /** For the tripod's height, which is written left of its legs. */
    private static final double LABEL = 52;

    private static final double TOP = 14;
    private static final double BELOW = 34;
    private static final double POINTS_PER_UNIT = 1;
    private static final double TALLEST = 520;

    private final YardRisks risks;
    private final SideScene scene;
    private final UnitSystem units;
    private final double slide;
    private final double personAt;

    private FieldDrawing(YardRisks risks, double away, UnitSystem units) {
        this.risks = risks;
        this.units = units;
        Scenario scenario = risks.light().scenario();
        scene = new SideScenes().of(seen(risks.light()), List.of(), Optional.empty(), units);
        slide = scenario.stand().slideMetres();
        personAt = scene.focus().towardsSunMetres() + away + HALF_PERSON;
    }

    /** The light of {@code risks}, a person {@code away} m from the focus. */
    public static FieldDrawing of(YardRisks risks, double away, UnitSystem units) {
        return new FieldDrawing(risks, away, units);
    }

    /** Without the pan a small disc stands for the focus. */
    private static Scenario seen(YardLight light) {
        Scenario scenario = light.scenario();
        return light.panStands() ? scenario : scenario.withTarget(new Plane(FOCUS, 0));
    }

    private double[] ends() {
        FieldBox box = risks.light().fields().get(1).box();
        double left = Math.min(box.corner().x() - slide, scene.mount().towardsSunMetres() - scene.legs());
        double right = Math.max(box.corner().x() + box.nx() * box.cellMetres() - slide, personAt + HALF_PERSON);
        double reached =
                risks.reach(Hazard.DISCOMFORT).height().map(Estimate::value).orElse(0.0);
        double high = Math.max(PERSON, Math.max(reached, top())) + ABOVE;
        return new double[] {left, right, high};
    }

    private double top() {
        return Math.max(scene.focus().heightMetres() + ABOVE, scene.upperRim().heightMetres());
    }

    private double perMetre(double width) {
        double[] ends = ends();
        return Math.min((width - 2 * LEFT - LABEL) / (ends[1] - ends[0]), TALLEST / ends[2]);
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        return TOP + ends()[2] * perMetre(width) + BELOW + HazardBands.legend().height(width - 2 * LEFT, metrics);
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        double[] ends = ends();
        double perMetre = perMetre(box.width());
        double spare = box.width() - 2 * LEFT - perMetre * (ends[1] - ends[0]);
        double ground = box.y() + TOP + ends[2] * perMetre;
        SideFrame frame = new SideFrame(box.x() + LEFT + Math.max(LABEL, spare / 2), ground, ends[0], perMetre);
        Box light =
                new Box(frame.left(), ground - ends[2] * perMetre, (ends[1] - ends[0]) * perMetre, ends[2] * perMetre);
        canvas.image(raster(ends, light), light);
        cooker(canvas, box, frame);
        person(canvas, frame);
        ruler(canvas, frame);
        double keyed = HazardBands.legend().height(box.width() - 2 * LEFT, canvas.metrics());
        HazardBands.legend().draw(canvas, new Box(box.x() + LEFT, ground + BELOW, box.width() - 2 * LEFT, keyed));
    }

    private Raster raster(double[] ends, Box light) {
        int wide = (int) Math.max(8, light.width() * POINTS_PER_UNIT);
        int high = (int) Math.max(8, light.height() * POINTS_PER_UNIT);
        int[] argb = new int[wide * high];
        YardLight.Probe probe = risks.light().new Probe();
        for (int row = 0; row < high; row++) {
            double z = ends[2] * (high - row - 0.5) / high;
            for (int column = 0; column < wide; column++) {
                double x = ends[0] + (ends[1] - ends[0]) * (column + 0.5) / wide + slide;
                argb[row * wide + column] = HazardBands.argb(flux(probe, x, z));
            }
        }
        return new Raster(wide, high, argb);
    }

    /** The mean over three places side by side, so that single cells do not speckle. */
    private double flux(YardLight.Probe probe, double x, double z) {
        double apart = risks.light().fields().get(1).box().cellMetres();
        double sum = 0;
        for (int k = -1; k <= 1; k++) {
            sum += probe.at(new Vec(x, k * apart, z)).together();
        }
        return sum / 3;
    }

    private void cooker(Canvas canvas, Box box, SideFrame frame) {
        double below = SideDrawing.keyHeight(scene, box.width(), canvas.metrics());
        Box room = new Box(box.x(), box.y(), box.width(), frame.ground() - box.y() + BELOW + below);
        canvas.clip(
                new Box(box.x(), box.y(), box.width(), frame.ground() - box.y() + 8),
                () -> SideDrawing.live(scene, units, frame).draw(canvas, room));
    }

    /** Head, trunk and legs. */
    private void person(Canvas canvas, SideFrame frame) {
        double u = frame.perMetre();
        double x = frame.x(new Place(personAt, 0));
        double y = frame.ground();
        List<double[]> body = new ArrayList<>();
        double[][] shape = {
            {-0.11, 0},
            {-0.13, 0.8},
            {-0.18, 1.1},
            {-0.17, 1.38},
            {-0.06, 1.46},
            {0.06, 1.46},
            {0.17, 1.38},
            {0.18, 1.1},
            {0.13, 0.8},
            {0.11, 0},
            {0.02, 0},
            {0, 0.75},
            {-0.02, 0}
        };
        for (double[] at : shape) {
            body.add(new double[] {x + at[0] * u, y - at[1] * u});
        }
        canvas.draw(Style.TARGET, Path.through(body, true));
        canvas.draw(Style.TARGET, new Circle(x, y - 1.59 * u, 0.1 * u));
    }

    /** A metre or a yard along the ground. */
    private void ruler(Canvas canvas, SideFrame frame) {
        boolean metric = units == UnitSystem.METRIC;
        double metres = metric ? 1 : 3 * UnitSystem.FOOT_METRES;
        double x = frame.left() + 4;
        double y = frame.ground() + 16;
        double end = x + metres * frame.perMetre();
        canvas.line(Style.TICK, x, y, end, y);
        canvas.line(Style.TICK, x, y - 4, x, y + 4);
        canvas.line(Style.TICK, end, y - 4, end, y + 4);
        canvas.write(Text.at(end + 6, y + 4, metric ? "1\u00a0m" : "3\u00a0ft").in(TextStyle.NOTE));
    }
}
