package simmerpoint.scenario.checks;

import java.util.Optional;
import simmerpoint.scenario.Problem;
import simmerpoint.scenario.SiteConditions;

/**
 * The sun a scenario means, from its own figures or from place, time and sky.
 *
 * @param elevationRadians above 0 to π/2
 * @param beamWattsPerSquareMetre above 0
 * @param site place, time and sky, if the file names them
 * @param timeless why the file does not say which moment it means; empty if it does
 */
record SunConditions(
        double elevationRadians,
        double beamWattsPerSquareMetre,
        Optional<SiteConditions> site,
        Optional<Problem> timeless) {}
