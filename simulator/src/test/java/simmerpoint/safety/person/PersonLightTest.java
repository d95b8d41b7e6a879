package simmerpoint.safety.person;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import simmerpoint.safety.CookerLight;
import simmerpoint.safety.SafetyStudy;
import simmerpoint.safety.field.YardLight;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/** A person in the light of a perfect dish that looks at a low sun, so that light past the focus meets the body. */
class PersonLightTest {
    private static final double F = 0.8;
    private static final double BEAM = 800;
    private static final double RHO = 0.85;
    private static final double ERRORS = 5;

    private static CookerLight light;

    @BeforeAll
    static void cast() throws Exception {
        Scenario scenario = ScenarioReader.parse(
                        "test",
                        "dish: {diameter: 1.2 m, focal-length: 0.8 m, surface: {cut: smooth}}\n"
                                + "sun: {elevation: 20°, beam: 800 W/m²}\n"
                                + "mirror: {material: own figures, reflectance: 0.85, scattered: 0, slope-error: 0 mrad,"
                                + " beam-spread: 0 mrad, wide-share: 0, panel-tilt: 0 mrad}\n"
                                + "plane: {disc: 10 cm}\n",
                        Path.of("."))
                .scenario();
        light = SafetyStudy.light(
                scenario, TraceOptions.defaults().withRays(1 << 17).withThreads(2), Progress.NONE);
    }

    private static PersonLight at(double gap) {
        YardLight all = light.taken().light();
        return PersonLight.of(all, PersonLight.standing(all.scenario(), gap));
    }

    /**
     * Off the focus of a perfect dish the flux is ρ·DNI·f²/(ζ² cos⁴(ψ/2)), ζ the distance and ψ the angle from the axis
     * (derived from the geometry of the paraboloid, as in the test of the light in space), and nothing beyond the rim angle ψ of 41°. At a gap of 80 cm
     * no part of the body is nearer than that.
     */
    @Test
    void theStrongestLightIsThatOfTheLawOffTheFocus() {
        PersonLight person = at(0.8);
        double rim = 2 * Math.atan(1.2 / (4 * F));
        double most = RHO * BEAM * Math.pow(F / 0.8, 2) / Math.pow(Math.cos(rim / 2), 4);
        double least = RHO * BEAM * Math.pow(F / (0.8 / Math.cos(Math.toRadians(20)) + 0.06), 2);
        double slack = ERRORS * person.light().standardError();
        assertTrue(person.light().reflected() > least - slack, person + " under " + least);
        assertTrue(person.light().reflected() < 1.05 * most + slack, person + " above " + most);
        assertEquals(BEAM, person.light().direct(), 1e-9);
    }

    /** The same law with the strongest sun, 1000 W/m²: at ζ = f √(ρ·DNI/(1600 − DNI))/cos²(ψ/2) skin begins to get too hot. */
    @Test
    void peopleKeepAwayAsInTheStrongestSun() {
        double rim = 2 * Math.atan(1.2 / (4 * F));
        double law = F * Math.sqrt(RHO * 1000 / 600) / Math.pow(Math.cos(rim / 2), 2);
        assertEquals(1.05 * law, light.people(), 0.1 * law);
        assertEquals(1000, light.inStrongestSun().scenario().sun().beamWattsPerSquareMetre(), 0);
        assertEquals(light.people(), light.inStrongestSun().people(), 0);
    }

    @Test
    void gapsAreCountedFromTheNearSide() {
        assertEquals(0.8, at(0.8).gap(), 1e-12);
        assertEquals(0, at(-0.1).gap(), 0);
        assertEquals(0.4, at(-0.4 - 2 * PersonShape.HALF_WIDTH).gap(), 1e-12);
        assertTrue(at(0.8).isTowardsSun(light.scenario()));
    }

    @Test
    void behindTheDishThereIsNoLightOfTheMirrors() {
        assertEquals(0, at(-3).light().reflected(), 1e-9);
    }

    @Test
    void theOutlineIsClosedAndAsWideAsSaid() {
        double widest = PersonShape.body().stream()
                .mapToDouble(corner -> Math.abs(corner[0]))
                .max()
                .orElseThrow();
        assertEquals(PersonShape.HALF_WIDTH, widest, 0);
        assertEquals(PersonShape.HALF_WIDTH, PersonShape.halfWidth(1.1), 1e-12);
        assertEquals(PersonShape.HEAD_RADIUS, PersonShape.halfWidth(PersonShape.HEAD_HEIGHT), 1e-12);
        assertEquals(0, PersonShape.halfWidth(1.75), 0);
    }
}
