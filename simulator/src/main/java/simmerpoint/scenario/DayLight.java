package simmerpoint.scenario;

import java.util.Optional;

/**
 * The sun a scenario means, from its own figures or from place, time and sky.
 *
 * @param elevationRadians above 0 to π/2
 * @param beamWattsPerSquareMetre above 0
 * @param outdoors place, time and sky, if the file names them
 * @param timeless why the file does not say which moment it means; empty if it does
 */
record DayLight(
        double elevationRadians,
        double beamWattsPerSquareMetre,
        Optional<Outdoors> outdoors,
        Optional<Problem> timeless) {}
