package simmerpoint.safety.field;

import simmerpoint.scenario.Scenario;
import simmerpoint.sun.Sunlight;

/** The strongest sun that a cooker will meet, whatever its scenario's is: what safe distances go by. */
public final class StrongestSun {
    /** The strongest beam to expect near sea level, W/m²: common practice. */
    private static final double BEAM = 1000;

    private StrongestSun() {}

    /** Its beam, W/m²; the scenario's own where that is stronger. */
    public static double beam(Scenario scenario) {
        return Math.max(BEAM, scenario.sun().beamWattsPerSquareMetre());
    }

    /** The same cooker in it. */
    static Scenario of(Scenario scenario) {
        Sunlight sun = scenario.sun();
        return scenario.withSun(new Sunlight(sun.elevationRadians(), beam(scenario), sun.shape()));
    }
}
