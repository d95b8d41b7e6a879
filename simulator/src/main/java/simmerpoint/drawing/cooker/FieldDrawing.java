package simmerpoint.drawing.cooker;

import java.util.List;
import java.util.Optional;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.Canvas;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Style;
import simmerpoint.drawing.Text;
import simmerpoint.drawing.TextMetrics;
import simmerpoint.drawing.TextStyle;
import simmerpoint.pan.Plane;
import simmerpoint.safety.YardRisks;
import simmerpoint.safety.field.YardLight;
import simmerpoint.safety.person.PersonLight;
import simmerpoint.safety.person.PersonShape;
import simmerpoint.safety.risk.Hazard;
import simmerpoint.sampling.Estimate;
import simmerpoint.scenario.Scenario;
import simmerpoint.units.UnitSystem;

/**
 * The light in the upright plane through the dish's axis, under the cooker drawn from its side and the outline of a grown-up.
 * Places are coloured by the worst that light of mirrors and sun together does there. The frame does not depend on
 * where the grown-up stands.
 */
public final class FieldDrawing implements Drawing {
    private static final double ABOVE = 0.1;
    private static final double FOCUS = 0.02;
    private static final double LEFT = 16;

    /** Beside a grown-up who stands at an end. */
    private static final double BESIDE = 0.1;

    /** What a grown-up who is moved has beyond the nearest safe place, m. */
    private static final double WALK = 0.5;

    /** For the tripod's height, which is written left of its legs. */
    private static final double LABEL = 52;

    private static final double TOP = 14;
    private static final double BELOW = 34;
    private static final double TALLEST = 520;

    private final SideScene scene;
    private final UnitSystem units;
    private final Optional<FieldSlice> light;
    private final double[] ends;
    private final double person;
    private final double tallest;

    private FieldDrawing(
            SideScene scene,
            UnitSystem units,
            Optional<FieldSlice> light,
            double[] ends,
            double person,
            double tallest) {
        this.scene = scene;
        this.units = units;
        this.light = light;
        this.ends = ends;
        this.person = person;
        this.tallest = tallest;
    }

    /** The light of {@code risks}, a grown-up {@code away} m from the focus. */
    public static FieldDrawing of(YardRisks risks, double away, UnitSystem units) {
        return of(risks, FieldSlice.of(risks.light()), away, units);
    }

    /** The same over a picture of its light that was made before. */
    public static FieldDrawing of(YardRisks risks, FieldSlice light, double away, UnitSystem units) {
        Scenario scenario = risks.light().scenario();
        SideScene scene = new SideScenes().of(seen(risks.light()), List.of(), Optional.empty(), units);
        double person = PersonLight.standing(scenario, away) - slide(scenario);
        return new FieldDrawing(scene, units, Optional.of(light), ends(risks, scene, light, person), person, TALLEST);
    }

    private static double slide(Scenario scenario) {
        return scenario.stand().slideMetres();
    }

    /** What is drawn over a light: without the pan a small disc stands for the focus. */
    public static Scenario seen(YardLight light) {
        Scenario scenario = light.scenario();
        return light.panStands() ? scenario : scenario.withTarget(new Plane(FOCUS, 0));
    }

    /** Left, right and upper end, m. */
    private static double[] ends(YardRisks risks, SideScene scene, FieldSlice light, double person) {
        double left = Math.min(light.ends()[0], scene.mount().towardsSunMetres() - scene.legs());
        double right = Math.max(light.ends()[1], person + PersonShape.HALF_WIDTH + BESIDE);
        double reached =
                risks.reach(Hazard.DISCOMFORT).height().map(Estimate::value).orElse(0.0);
        double top =
                Math.max(scene.focus().heightMetres() + ABOVE, scene.upperRim().heightMetres());
        return new double[] {left, right, Math.max(PersonShape.HEIGHT, Math.max(reached, top)) + ABOVE};
    }

    /** With room to walk on both sides. */
    public FieldDrawing roomy() {
        double[] wide = {
            ends[0] - 2 * PersonShape.HALF_WIDTH - BESIDE,
            Math.max(ends[1], person + PersonShape.HALF_WIDTH + WALK),
            ends[2]
        };
        return new FieldDrawing(scene, units, light, wide, person, tallest);
    }

    /** The same with a grown-up whose middle stands so far towards the sun from under the mount, m. */
    public FieldDrawing withPerson(double towardsSun) {
        return new FieldDrawing(scene, units, light, ends, towardsSun - slide(scene.scenario()), tallest);
    }

    /** The same without the light. */
    public FieldDrawing withoutLight() {
        return new FieldDrawing(scene, units, Optional.empty(), ends, person, tallest);
    }

    /** The same no higher than so many units, but for the ground and what the colours mean. */
    public FieldDrawing tallest(double units) {
        return new FieldDrawing(scene, this.units, light, ends, person, units);
    }

    /** The leftmost and the rightmost place for a grown-up's middle, level from under the mount, m. */
    public double[] walk() {
        double slide = slide(scene.scenario());
        return new double[] {ends[0] + PersonShape.HALF_WIDTH + slide, ends[1] - PersonShape.HALF_WIDTH + slide};
    }

    /** The place under a point of the drawing, level from under the mount, m. */
    public double towardsSun(Box box, double x) {
        return frame(box).at(x, 0).towardsSunMetres() + slide(scene.scenario());
    }

    /** What the grown-up covers. */
    public Box personBox(Box box) {
        return PersonOutline.box(frame(box), person);
    }

    private double perMetre(double width) {
        return Math.min((width - 2 * LEFT - LABEL) / (ends[1] - ends[0]), tallest / ends[2]);
    }

    @Override
    public double height(double width, TextMetrics metrics) {
        return TOP + ends[2] * perMetre(width) + BELOW + HazardBands.legend().height(width - 2 * LEFT, metrics);
    }

    private SideFrame frame(Box box) {
        double perMetre = perMetre(box.width());
        double spare = box.width() - 2 * LEFT - perMetre * (ends[1] - ends[0]);
        double ground = box.y() + TOP + ends[2] * perMetre;
        return new SideFrame(box.x() + LEFT + Math.max(LABEL, spare / 2), ground, ends[0], perMetre);
    }

    @Override
    public void draw(Canvas canvas, Box box) {
        SideFrame frame = frame(box);
        Box above = new Box(box.x(), box.y(), box.width(), frame.ground() - box.y());
        canvas.clip(above, () -> light.ifPresent(slice -> slice.draw(canvas, frame)));
        cooker(canvas, box, frame);
        PersonOutline.draw(canvas, frame, person);
        ruler(canvas, frame);
        double keyed = HazardBands.legend().height(box.width() - 2 * LEFT, canvas.metrics());
        HazardBands.legend()
                .draw(canvas, new Box(box.x() + LEFT, frame.ground() + BELOW, box.width() - 2 * LEFT, keyed));
    }

    private void cooker(Canvas canvas, Box box, SideFrame frame) {
        double below = SideDrawing.keyHeight(scene, box.width(), canvas.metrics());
        Box room = new Box(box.x(), box.y(), box.width(), frame.ground() - box.y() + BELOW + below);
        canvas.clip(
                new Box(box.x(), box.y(), box.width(), frame.ground() - box.y() + 8),
                () -> SideDrawing.live(scene, units, frame).draw(canvas, room));
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
