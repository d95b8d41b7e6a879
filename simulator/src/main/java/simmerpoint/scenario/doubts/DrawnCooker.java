package simmerpoint.scenario.doubts;

import java.util.function.UnaryOperator;
import simmerpoint.heat.losses.LossFactors;
import simmerpoint.scenario.Scenario;
import simmerpoint.sun.SunMoment;
import simmerpoint.sun.Sunlight;

/**
 * One cooker that the scenario may turn out to be.
 *
 * @param scenario with the figures of this draw
 * @param beamFactor how much stronger its sun is than the sky says
 * @param losses factors of its pan's losses
 * @param draw number of the draw
 * @param build which of many dishes built with the same care it is, for the luck of gluing; 0 is the one that is traced
 */
public record DrawnCooker(Scenario scenario, double beamFactor, LossFactors losses, int draw, long build) {
    private static final long BUILDS_APART = 0x9E3779B97F4A7C15L;

    /** Seed of how its panels are glued, where those of the cooker as given follow {@code seed}. */
    public long buildSeed(long seed) {
        return seed + BUILDS_APART * build;
    }

    /** The same cooker standing or aimed otherwise. */
    public DrawnCooker changed(UnaryOperator<Scenario> change) {
        return new DrawnCooker(change.apply(scenario), beamFactor, losses, draw, build);
    }

    /** The same cooker at another moment of its place, under the beam that its own sky gives then. */
    public DrawnCooker at(SunMoment moment) {
        double beam = scenario.site().orElseThrow().sky().at(moment).likelyWattsPerSquareMetre();
        Sunlight then = new Sunlight(
                moment.position().elevationRadians(),
                beamFactor * beam,
                scenario.sun().shape());
        return new DrawnCooker(scenario.withSun(then), beamFactor, losses, draw, build);
    }
}
