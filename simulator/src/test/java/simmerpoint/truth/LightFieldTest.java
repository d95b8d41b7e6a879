package simmerpoint.truth;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.geometry.Vec;
import simmerpoint.safety.field.FieldBox;
import simmerpoint.safety.field.FieldStudy;
import simmerpoint.safety.field.LightField;
import simmerpoint.safety.field.Yard;
import simmerpoint.safety.field.YardLight;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;
import simmerpoint.study.trace.TraceResult;

/** The light in space around a dish against closed forms and laws of light. Standard errors are those of 16 replicates. */
class LightFieldTest {
    /** Passed by chance once in 6,000 times (Student's law, 15 degrees of freedom). */
    private static final double ERRORS = 5;

    private static final int FINE = 8;

    private static LightField field(Scene scene, FieldBox box, long rays, boolean pan) {
        return lights(scene, List.of(box), rays, pan).fields().get(0);
    }

    private static YardLight lights(Scene scene, List<FieldBox> boxes, long rays, boolean pan) {
        TraceOptions options = TraceOptions.defaults().withRays(rays).withThreads(2);
        return FieldStudy.run(scene.scenario(), options, boxes, List.of(pan), Progress.NONE)
                .get(0);
    }

    private static FieldBox cell(Vec middle, double edge) {
        return new FieldBox(middle.minus(new Vec(edge, edge, edge).times(0.5)), edge, 1, 1, 1);
    }

    /**
     * Collimated light off the focus of a perfect paraboloid: on the plane ζ beyond or before the focus the flux is ρ·DNI
     * (f/ζ)² cos³ψ/cos⁴(ψ/2) at ζ·tan ψ (derived from the paraboloid's geometry); its fluence is 1/cos ψ of that.
     */
    @ParameterizedTest
    @CsvSource({
        "0.25, 0, 90",
        "0.25, 30, 90",
        "0.25, 45, 50",
        "0.5, 30, 50",
        "1.0, 0, 20",
        "1.0, 45, 90",
        "-0.25, 20, 50"
    })
    void lightOffTheFocusFollowsTheClosedForm(double zeta, double psiDegrees, double elevationDegrees) {
        Scene scene = Scene.of(Scene.smooth(1.2, 0.5, 0), Scene.disc(0.05))
                .with(Mirror.plain(0.85, 0))
                .with(Scene.POINT)
                .beam(800)
                .elevation(Math.toRadians(elevationDegrees));
        Yard yard = Yard.of(scene.scenario());
        double tan = Math.tan(Math.toRadians(psiDegrees));
        Vec place = yard.place(new Vec(0.6 * zeta * tan, 0.8 * zeta * tan, 0.5 + zeta));
        FieldBox box = cell(place, 0.04);
        LightField.Light light = field(scene, box, 1 << 20, false).cell(0, 0, 0);
        double fluence = 0;
        Vec net = Vec.ZERO;
        for (int k = 0; k < FINE * FINE * FINE; k++) {
            int row = k / FINE % FINE;
            int layer = k / (FINE * FINE);
            Vec step = new Vec(k % FINE + 0.5, row + 0.5, layer + 0.5).times(0.04 / FINE);
            Vec from = yard.wellAimed(box.corner().plus(step)).minus(new Vec(0, 0, 0.5));
            double cos = Math.abs(from.z()) / from.length();
            double here = 680 * Math.pow(0.5 / from.z(), 2) * Math.pow(cos, 2) / Math.pow((1 + cos) / 2, 2);
            fluence += here;
            net = net.plus(from.times(Math.signum(from.z()) * here / from.length()));
        }
        fluence /= FINE * FINE * FINE;
        double along = net.length() / (FINE * FINE * FINE);
        double slack = ERRORS * light.standardError() + 1e-3 * fluence;
        assertEquals(fluence, light.fluence(), slack);
        assertEquals(along, light.least(), slack);
        assertTrue(yard.wellAimed(light.net().plus(yard.place(Vec.ZERO))).z() > 0, "light goes away from the dish");
        assertTrue(light.least() <= light.most() && light.most() <= light.fluence() * (1 + 1e-6));
    }

    /**
     * No surface anywhere gets more than ρ·DNI·sin²(rim)/sin²θ: brightness cannot rise (stated in Rabl, Active Solar Collectors, 1985,
     * from memory). At the middle of the focus of a perfect dish it gets just that. The bound (F + |N|)/2 is above the
     * true value by 1/(1 + cos rim) + 1/2 there: F = 2π(1 − cos rim)L and N = π sin²(rim)·L for an even cone (derived here).
     */
    @Test
    void noPlaceIsBrighterThanTheSunAllowsAndTheFocusIsJustThat() {
        Scene scene = Scene.of(Scene.smooth(1.2, 0.5, 0), Scene.disc(0.05)).with(Mirror.plain(0.85, 0));
        double rim = 2 * Math.atan(1.2 / (4 * 0.5));
        double bound = 850 * Math.pow(Math.sin(rim) / Math.sin(Scene.SUN), 2);
        // Seen from the corner of the box that is nearest to the dish, the rim stands wider.
        double wide = Math.atan2(0.6 + 0.0085, 0.5 - 0.18 - 0.0085);
        double widest = bound * Math.pow(Math.sin(wide) / Math.sin(rim), 2);
        Vec focus = Yard.of(scene.scenario()).place(new Vec(0, 0, 0.5));
        FieldBox box = new FieldBox(focus.minus(new Vec(8.5, 8.5, 8.5).times(0.001)), 0.001, 17, 17, 17);
        LightField field = field(scene, box, 1 << 21, false);
        double above = 1 / (1 + Math.cos(rim)) + 0.5;
        double mostAbove = 1 / (1 + Math.cos(wide)) + 0.5;
        for (int k = 0; k < box.cells(); k++) {
            LightField.Light light = field.cell(k % 17, k / 17 % 17, k / 289);
            double slack = ERRORS * light.standardError();
            assertTrue(light.least() <= widest + slack, light + " is above " + widest);
            assertTrue(light.most() <= mostAbove * widest + slack, light + " is above " + mostAbove * widest);
        }
        LightField.Light middle = field.cell(8, 8, 8);
        assertEquals(bound, middle.least(), 0.01 * bound + ERRORS * middle.standardError());
        assertEquals(above * bound, middle.most(), 0.01 * bound + ERRORS * middle.standardError());
    }

    /**
     * A small flat mirror far away: seen from the middle of its patch it is filled with sun, so a surface there gets the sun's
     * radiance DNI/(π sin²θ) times the mirror's solid angle A/L²; beyond the patch widened by the sun, nothing.
     */
    @Test
    void aFlatMirrorFarAwayThrowsThePatchThatTheSunWidens() {
        double far = 6;
        Scene scene = Scene.of(Scene.mesh(0.03, 1, Tile.mesh(Tile.atVertex(0.02))), Scene.disc(0.01));
        Yard yard = Yard.of(scene.scenario());
        double expected = 1000 * 4e-4 / (far * far * Math.PI * Math.pow(Math.sin(Scene.SUN), 2));
        LightField.Light middle = field(scene, cell(yard.place(new Vec(0, 0, far)), 0.01), 1 << 20, false)
                .cell(0, 0, 0);
        assertEquals(expected, middle.most(), ERRORS * middle.standardError() + 2e-3 * expected);
        double edge = far * Math.tan(Scene.SUN) + 0.01 * Math.sqrt(2) + 0.006;
        LightField.Light beside = field(scene, cell(yard.place(new Vec(edge, 0, far)), 0.01), 1 << 18, false)
                .cell(0, 0, 0);
        assertEquals(0, beside.fluence(), 0);
    }

    /** Sum of N along the axis over one level layer of a box that all light crosses, W. */
    private static double through(LightField field, int layer) {
        FieldBox box = field.box();
        double watts = 0;
        for (int j = 0; j < box.ny(); j++) {
            for (int i = 0; i < box.nx(); i++) {
                watts += field.cell(i, j, layer).net().z() * box.cellMetres() * box.cellMetres();
            }
        }
        return watts;
    }

    /** The sun stands overhead, so that layers are square to the axis: all reflected light crosses them, less what the pan stops. */
    @Test
    void whatCrossesALayerIsTheReflectedLightAndWhatThePanTakesIsMissingAboveIt() {
        Scene scene = Scene.of(Scene.rings(1.2, 0.8, 0.06, 24, 6), Scene.pan(0.03, 0.02))
                .with(Mirror.plain(0.85, 0.004))
                .pullBack(0.05);
        TraceResult traced = scene.trace(1 << 18, 1);
        double reflected = traced.ledger().reflected().value();
        double caught = traced.ledger().caught().value();
        double error = traced.ledger().caught().standardError();
        // 60 cm of the mount, 80 cm to the focus: from 30 cm below to 30 cm above.
        FieldBox box = new FieldBox(new Vec(-0.5, -0.5, 1.1), 0.02, 50, 50, 30);
        LightField field = field(scene, box, 1 << 18, true);
        assertEquals(reflected, through(field, 0), 1e-3 * reflected);
        assertEquals(reflected, through(field, 14), 1e-3 * reflected);
        assertTrue(caught < 0.9 * reflected && caught > 0.2 * reflected, "the pan takes part of it");
        assertEquals(reflected - caught, through(field, 25), ERRORS * error * 1.5 + 2e-3 * reflected);
    }

    /** Light comes in as it goes out: the net flux through a closed surface with nothing in it is 0. */
    @Test
    void whatGoesIntoAnEmptyBoxComesOutOfIt() {
        Scene scene = Scene.of(Scene.rings(1.2, 0.8, 0.06, 24, 6), Scene.disc(0.05))
                .with(Mirror.plain(1, 0.004))
                .elevation(Math.toRadians(50));
        Vec focus = Yard.of(scene.scenario()).place(new Vec(0, 0, 0.8));
        FieldBox box = new FieldBox(focus.plus(new Vec(0.02, -0.3, -0.1)), 0.02, 24, 30, 24);
        LightField field = field(scene, box, 1 << 20, false);
        double out = 0;
        double gross = 0;
        for (int a = 4; a < 20; a++) {
            for (int b = 4; b < 20; b++) {
                for (int end : new int[] {4, 20}) {
                    double sign = end == 4 ? -1 : 1;
                    double x = field.cell(end - 1, a, b).net().x()
                            + field.cell(end, a, b).net().x();
                    double y = field.cell(a, end - 1, b).net().y()
                            + field.cell(a, end, b).net().y();
                    double z = field.cell(a, b, end - 1).net().z()
                            + field.cell(a, b, end).net().z();
                    out += sign * (x + y + z) / 2;
                    gross += (Math.abs(x) + Math.abs(y) + Math.abs(z)) / 2;
                }
            }
        }
        assertTrue(gross * 4e-4 > 50, "much light crosses the box: " + gross * 4e-4 + " W");
        assertEquals(0, out, 0.01 * gross);
    }

    /** The sun shines from outside on everything but what lies behind dish and pan. */
    @Test
    void dishAndPanThrowTheirShadows() {
        Scene scene = Scene.of(Scene.smooth(1.2, 0.8, 0), Scene.pan(0.1, 0.1)).elevation(Math.toRadians(40));
        Yard yard = Yard.of(scene.scenario());
        YardLight.Probe probe = lights(scene, List.of(cell(new Vec(9, 9, 9), 0.1)), 1 << 10, true).new Probe();
        assertEquals(0, probe.at(yard.place(new Vec(0.2, 0.1, -0.3))).direct(), 0, "behind the dish");
        assertEquals(0, probe.at(yard.place(new Vec(0, 0, 0.5))).direct(), 0, "behind the pan");
        assertEquals(1000, probe.at(yard.place(new Vec(0.3, 0.3, 0.5))).direct(), 0, "in front of the dish");
        assertEquals(1000, probe.at(yard.place(new Vec(0.7, 0, -0.3))).direct(), 0, "beside the dish");
        assertEquals(1000, probe.at(yard.place(new Vec(0, 0, 2))).direct(), 0, "towards the sun");
    }

    @Test
    void threadsDoNotChangeIt() {
        Scene scene = Scene.of(Scene.rings(1.2, 0.8, 0.06, 24, 6), Scene.pan(0.1, 0.1))
                .with(Mirror.plain(0.8, 0.005));
        FieldBox box = new FieldBox(new Vec(-0.5, -0.5, 0.6), 0.05, 20, 20, 20);
        LightField one = FieldStudy.run(
                        scene.scenario(),
                        TraceOptions.defaults().withRays(1 << 14).withThreads(1),
                        List.of(box),
                        List.of(true),
                        Progress.NONE)
                .get(0)
                .fields()
                .get(0);
        LightField two = field(scene, box, 1 << 14, true);
        for (int k = 0; k < box.cells(); k++) {
            assertEquals(one.cell(k % 20, k / 20 % 20, k / 400), two.cell(k % 20, k / 20 % 20, k / 400));
        }
    }
}
