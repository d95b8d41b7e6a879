package simmerpoint.safety.parked;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.ScenarioException;
import simmerpoint.scenario.file.ScenarioReader;
import simmerpoint.study.trace.Progress;
import simmerpoint.study.trace.TraceOptions;

/** Light of a dish on a wall and on its pan's stand while the sun stands on its axis, against the law off the focus. */
class ParkedWallTest {
    private static final double F = 0.5;
    private static final double BEAM = 800;
    private static final double RHO = 0.85;
    private static final double ELEVATION = Math.toRadians(20);

    private static Scenario dish() throws ScenarioException {
        return ScenarioReader.parse(
                        "test",
                        "dish: {diameter: 1.0 m, focal-length: 0.5 m, surface: {cut: smooth}}\n"
                                + "sun: {elevation: 20°, beam: 800 W/m²}\naim: {mount: 0 cm}\n"
                                + "mirror: {material: own figures, reflectance: 0.85, scattered: 0, slope-error: 0 mrad,"
                                + " beam-spread: 0 mrad, wide-share: 0, panel-tilt: 0 mrad}\n",
                        Path.of("."))
                .scenario();
    }

    /** The most of ρ·DNI·f²/(ζ² cos⁴(ψ/2)) at ζ where the level distance from the mount gets 1 m, within the rim angle ψ. */
    private static double law() {
        double rim = 2 * Math.atan(1 / (4 * F));
        double most = 0;
        for (double psi = -rim; psi <= rim; psi += 0.01) {
            double zeta = (1 - F * Math.cos(ELEVATION)) / Math.cos(ELEVATION + psi);
            double here = RHO * BEAM * Math.pow(F / zeta, 2) / Math.pow(Math.cos(psi / 2), 4);
            most = Math.max(most, Math.cos(ELEVATION + psi) > 0 ? here : 0);
        }
        return most;
    }

    /** Cells there are 8 cm wide: their middles lie up to that farther away, and their light is a mean. */
    @Test
    void aWallGetsWhatTheLawSays() throws ScenarioException {
        ParkedSpot spot = new ParkedLight(
                        dish(), TraceOptions.defaults().withRays(1 << 16).withThreads(2))
                .at(ELEVATION, 0, 0, BEAM, List.of(), List.of(), Progress.NONE);
        double nearest = law() + BEAM;
        assertTrue(spot.wallFlux() < 1.1 * nearest, spot.wallFlux() + " above " + nearest);
        assertTrue(spot.wallFlux() > 0.65 * nearest, spot.wallFlux() + " under " + nearest);
        assertEquals(0, spot.standFlux(), 0);
    }

    @Test
    void theStandIsAPostUnderThePanOrAnArmOfTheDish() throws ScenarioException {
        Scenario dish = dish();
        assertTrue(StandPlaces.of(dish).stream()
                .allMatch(place -> Math.abs(place.x() - F * Math.cos(ELEVATION)) < 1e-9 && place.z() > 0));
        assertTrue(StandPlaces.of(dish).stream().anyMatch(place -> place.z() > 0.6));
        ParkedSpot spot = new ParkedLight(
                        dish, TraceOptions.defaults().withRays(1 << 16).withThreads(2))
                .at(ELEVATION, 0, 0, BEAM, List.of(), StandPlaces.of(dish), Progress.NONE);
        assertTrue(spot.standFlux() > 10 * BEAM && spot.standFlux() <= spot.flux(), spot.toString());
    }
}
