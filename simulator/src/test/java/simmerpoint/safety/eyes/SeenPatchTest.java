package simmerpoint.safety.eyes;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ScenarioReader;

/** Size and harm of the bright patch against closed forms. */
class SeenPatchTest {
    private static final double BRIGHT = 0.85 * 800;

    private static Scenario dish() throws ScenarioException {
        return ScenarioReader.parse(
                        "test",
                        "dish: {diameter: 1.2 m, focal-length: 0.8 m, surface: {cut: smooth}}\n"
                                + "sun: {elevation: 50°, beam: 800 W/m²}\n"
                                + "mirror: {material: own figures, reflectance: 0.85, scattered: 0, slope-error: 0 mrad,"
                                + " beam-spread: 0 mrad, wide-share: 0, panel-tilt: 0 mrad}\n",
                        Path.of("."))
                .scenario();
    }

    /** A flat mirror shows the sun as large as it is, and throws ρ·DNI; the patch grows as the root of the light. */
    @Test
    void theLightOfOneFlatMirrorIsOneSunWide() throws ScenarioException {
        assertEquals(RetinalMetric.SUN, SeenPatch.of(dish(), BRIGHT).radians(), 1e-12);
        assertEquals(3 * RetinalMetric.SUN, SeenPatch.of(dish(), 9 * BRIGHT).radians(), 1e-12);
        assertEquals(0.85, SeenPatch.of(dish(), BRIGHT).suns(), 1e-12);
        assertEquals(0, SeenPatch.of(dish(), 0).radians(), 0);
        assertEquals(SeenPatch.Harm.NONE, SeenPatch.of(dish(), 0).harm());
    }

    /**
     * Off the focus the light is ρ·DNI·f²/(ζ² cos⁴(ψ/2)) (paraboloid's geometry). The metric's border E_r = 0.118/ω with E_r =
     * E_c d²τ/(f_eye² ω²) for E_c = 0.068 W/cm² of one sun of 9.3 mrad (Ho, Ghanbari, Diver 2011, from memory): E_r = 5.441 W/cm²
     * whatever the size, so ω = 21.69 mrad.
     */
    @Test
    void theBorderOfDamageIsThatOfTheMetric() throws ScenarioException {
        Glare glare = Glare.of(dish());
        assertEquals(0.02169, glare.burnAngle(), 5e-5);
        double rim = 2 * Math.atan(1.2 / (4 * 0.8));
        double law = BRIGHT * Math.pow(0.8 / glare.burnMetres(), 2) / Math.pow(Math.cos(rim / 2), 4);
        assertEquals(SeenPatch.Harm.DAMAGE, SeenPatch.of(dish(), 1.02 * law).harm());
        assertEquals(
                SeenPatch.Harm.AFTER_IMAGE, SeenPatch.of(dish(), 0.98 * law).harm());
    }
}
