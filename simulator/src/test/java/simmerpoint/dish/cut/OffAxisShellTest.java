package simmerpoint.dish.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import simmerpoint.dish.Cut;
import simmerpoint.dish.DishPlan;
import simmerpoint.dish.MirrorSurface;
import simmerpoint.dish.OwnSize;
import simmerpoint.geometry.Direction;
import simmerpoint.geometry.Vec;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.setup.SideView;
import simmerpoint.setup.Stand;
import simmerpoint.setup.StandGeometry;

/** Where a shell lies in the dish frame, where its builder finds the focus, and what is refused. */
class OffAxisShellTest {
    private static final Path HERE = Path.of("src/test/resources");
    private static final ShellTape TAPE = new ShellTape(0.9, 0.99177, 0.08508);
    private static final ShellTape MILLIMETRE = new ShellTape(0.001, 0.001, 0.001);

    private static DishPlan plan(ShellTape tape, boolean nearEndUp, ShellTape supposed) {
        Cut cut = new OffAxisShell(tape, MILLIMETRE, 0, nearEndUp, supposed);
        OwnSize size = cut.ownSize().orElseThrow();
        return new DishPlan(size.diameterMetres(), size.focalLengthMetres(), 0, 0, cut);
    }

    private static Vec end(DishPlan plan, boolean near, boolean nearEndUp) {
        double x = near == nearEndUp ? plan.upperEdgeMetres() : -plan.lowerEdgeMetres();
        return plan.onMirror(x, 0);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void theRimIsSeenAsACircleAndMeasuresWhatTheTapeSays(boolean nearEndUp) {
        DishPlan plan = plan(TAPE, nearEndUp, TAPE);
        Vec near = end(plan, true, nearEndUp);
        Vec far = end(plan, false, nearEndUp);
        assertEquals(TAPE.height(), far.minus(near).length(), 1e-12);
        assertTrue(near.z() < far.z());
        assertEquals(nearEndUp, near.x() > far.x());
        assertEquals(TAPE.nearString(), near.minus(plan.supposedFocus()).length(), 1e-12);
        assertEquals(TAPE.farString(), far.minus(plan.supposedFocus()).length(), 1e-12);
        MirrorSurface surface = plan.surface(Direction.Z);
        assertEquals(Math.PI * 0.81 / 4, surface.apertureArea(), 1e-12);
        assertEquals(surface.outlineArea(), surface.apertureArea(), 0);
        assertFalse(plan.hasHoles());
        assertEquals(
                2 * Math.atan(far.x() / (2 * plan.focalLengthMetres())), (nearEndUp ? -1 : 1) * plan.rimAngle(), 1e-12);
        assertEquals(Double.NEGATIVE_INFINITY, surface.heightAt(-0.1 * far.x(), 0));
    }

    /** Who takes another length for true stands the pan where strings of those lengths meet on the shell as it is. */
    @Test
    void theSupposedFocusIsWhereTheStringsMeet() {
        ShellTape measured = new ShellTape(0.902, 0.990, 0.087);
        DishPlan plan = plan(TAPE, false, measured);
        Vec place = plan.supposedFocus();
        assertEquals(measured.nearString(), place.minus(end(plan, true, false)).length(), 1e-12);
        assertEquals(measured.farString(), place.minus(end(plan, false, false)).length(), 1e-12);
        assertTrue(place.minus(new Vec(0, 0, plan.focalLengthMetres())).length() > 0.01);
        assertEquals(
                plan.cut(),
                plan(TAPE, false, TAPE)
                        .cut()
                        .supposedAs(plan(measured, false, measured).cut()));
    }

    /** Heights by the formulas of {@link StandGeometry} and by projecting points of the shell. */
    @ParameterizedTest
    @CsvSource({"20, false", "52, false", "85, false", "52, true"})
    void standsOnItsMountBehindItsMiddle(double degrees, boolean nearEndUp) {
        DishPlan plan = plan(TAPE, nearEndUp, TAPE);
        double a = Math.toRadians(degrees);
        Stand stand = new Stand(0.04, -0.02, 0.03, 0);
        StandGeometry g = StandGeometry.of(plan, a, 0.12, 0.9, stand);
        SideView view = new SideView(a, plan.mount(0.12), 0.9);
        double lowest = Double.POSITIVE_INFINITY;
        for (int k = 0; k <= 9000; k++) {
            lowest = Math.min(
                    lowest,
                    view.of(plan.onMirror(-plan.lowerEdgeMetres() + k * 1e-4, 0))
                            .heightMetres());
        }
        assertEquals(lowest, g.clearanceMetres(), 1e-7);
        SideView.Place focus = view.of(new Vec(0, 0, plan.focalLengthMetres() + 0.04));
        assertEquals(focus.heightMetres() + 0.03, g.panHeightMetres(), 1e-12);
        assertEquals(focus.towardsSunMetres() - 0.02, g.panDistanceMetres(), 1e-12);
        SideView.Place middle = view.of(plan.middle());
        assertEquals(0.12, Math.hypot(middle.towardsSunMetres(), middle.heightMetres() - 0.9), 1e-12);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "width: 100 cm, height: 99 cm, depth: 85 mm|width: 1 m is more than the height, 99 cm",
                "width: 45 cm, height: 99 cm, depth: 85 mm|is twice the width",
                "width: 90 cm, height: 99 cm, depth: 40 cm|too deep for a shell 90 cm wide",
                "height: 99 cm, depth: 85 mm|write for instance width: 900 mm",
                "width: 90 cm, height: 99 cm, depth: 85 mm, near-end: left|near-end"
            })
    void wrongMeasuresAreRefusedWithWhatTheyMean(String keys, String said) {
        ScenarioException refused = assertThrows(
                ScenarioException.class,
                () -> ScenarioReader.parse("t.yaml", "dish: {surface: {cut: off-axis-shell, " + keys + "}}", HERE));
        assertTrue(refused.getMessage().contains(said), refused.getMessage());
    }

    @Test
    void whatTheTapeSaysIsNotAskedForTwice() {
        ScenarioException refused = assertThrows(
                ScenarioException.class,
                () -> ScenarioReader.parse(
                        "t.yaml",
                        "dish: {diameter: 90 cm, focal-length: 54 cm, hub: 5 cm, surface: {cut:"
                                + " off-axis-shell, width: 90 cm, height: 99 cm, depth: 85 mm}}",
                        HERE));
        for (String key : new String[] {"diameter", "focal-length", "hub"}) {
            assertTrue(
                    refused.sentences().toString().contains("leave " + key + " out"),
                    refused.sentences().toString());
        }
    }
}
