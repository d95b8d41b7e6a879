package simmerpoint.safety;

import java.util.List;
import java.util.Optional;
import simmerpoint.safety.eyes.Glare;
import simmerpoint.safety.kitchen.KitchenRisks;
import simmerpoint.safety.parked.ParkedResult;
import simmerpoint.safety.places.LookedAt;
import simmerpoint.scenario.Scenario;

/**
 * What one cooker can burn, light or blind.
 *
 * @param scenario the cooker
 * @param light as it is aimed
 * @param places things that somebody asks about, those of the scenario first
 * @param parked what it does when it is left uncovered
 * @param glare what somebody sees who looks into its light
 * @param kitchen what the light does to food, pan and handle; empty for a bare disc
 * @param seed of the rays
 * @param run what differs from run to run
 */
public record SafetyResult(
        Scenario scenario,
        CookerLight light,
        List<LookedAt> places,
        ParkedResult parked,
        Glare glare,
        Optional<KitchenRisks> kitchen,
        long seed,
        RunInfo run) {
    /** Keeps a copy of the list. */
    public SafetyResult {
        places = List.copyOf(places);
    }

    /**
     * What differs from run to run.
     *
     * @param rays traced
     * @param threads used
     * @param seconds wall time of the light field
     */
    public record RunInfo(long rays, int threads, double seconds) {}

    /** With the pan in place. */
    public YardRisks standing() {
        return light.standing();
    }

    /** With the pan taken away. */
    public YardRisks taken() {
        return light.taken();
    }

    /** The hottest light of the cooker, sun included, W/m². */
    public double cautionFlux() {
        return light.cautionFlux();
    }

    /** How far people must stay away from the focus, m, in the strongest sun; 0 if no place of the yard gets unpleasant. */
    public double people() {
        return light.people();
    }

    /** How far things that burn must stay away in the strongest sun, m; 0 if nothing can. */
    public double things() {
        return light.things();
    }
}
