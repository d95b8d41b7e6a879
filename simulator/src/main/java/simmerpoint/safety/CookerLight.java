package simmerpoint.safety;

import simmerpoint.safety.risk.Hazard;
import simmerpoint.scenario.Scenario;

/**
 * The light of one cooker as it is aimed.
 *
 * @param standing with the pan in place
 * @param taken with the pan taken away; the same for a bare disc, which stops nothing
 */
public record CookerLight(YardRisks standing, YardRisks taken) {
    /** How far people must stay away from the focus: the farthest that light gets unpleasant, m; 0 if it nowhere is. */
    public double people() {
        return away(Hazard.DISCOMFORT);
    }

    /** How far things that burn must stay away, m; 0 if nothing can. */
    public double things() {
        return away(Hazard.SMOULDER);
    }

    /** The cooker. */
    public Scenario scenario() {
        return taken.light().scenario();
    }

    /** The hottest light of the cooker, sun included, W/m². */
    public double cautionFlux() {
        return taken.hottest().light().together();
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
