package simmerpoint.safety;

import java.util.List;
import java.util.Optional;
import simmerpoint.safety.eyes.Glare;
import simmerpoint.safety.kitchen.KitchenRisks;
import simmerpoint.safety.parked.ParkedResult;
import simmerpoint.safety.places.LookedAt;
import simmerpoint.safety.risk.Hazard;
import simmerpoint.scenario.Scenario;

/**
 * What one cooker can burn, light or blind.
 *
 * @param scenario the cooker
 * @param standing with the pan in place
 * @param taken with the pan taken away; the same for a bare disc, which stops nothing
 * @param places things that somebody asks about, those of the scenario first
 * @param parked what it does when it is left uncovered
 * @param glare what somebody sees who looks into its light
 * @param kitchen what the light does to food, pan and handle; empty for a bare disc
 * @param seed of the rays
 * @param run what differs from run to run
 */
public record SafetyResult(
        Scenario scenario,
        YardRisks standing,
        YardRisks taken,
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

    /** The hottest light of the cooker, sun included, W/m². */
    public double cautionFlux() {
        return taken.hottest().light().together();
    }

    /** How far people must stay away: the farthest that light gets unpleasant with the pan taken away, m; 0 if it nowhere is. */
    public double people() {
        return away(Hazard.DISCOMFORT);
    }

    /** How far things that burn must stay away, m; 0 if nothing can. */
    public double things() {
        return away(Hazard.SMOULDER);
    }

    private double away(Hazard hazard) {
        return Math.max(away(standing, hazard), away(taken, hazard));
    }

    /** With two standard errors. */
    private static double away(YardRisks risks, Hazard hazard) {
        return risks.farthest(hazard)
                .map(d -> d.value() + 2 * d.standardError())
                .orElse(0.0);
    }
}
