package simmerpoint.safety;

import java.util.List;
import java.util.Optional;
import simmerpoint.safety.field.YardLight;
import simmerpoint.safety.risk.Hazard;
import simmerpoint.scenario.Scenario;

/**
 * The light of one cooker as it is aimed.
 *
 * @param standing with the pan in place
 * @param taken with the pan taken away; the same for a bare disc, which stops nothing
 * @param strongest the same in the strongest sun; empty where no sun is stronger
 */
public record CookerLight(YardRisks standing, YardRisks taken, Optional<CookerLight> strongest) {
    /** Of light with the pan in place and taken away, or of light without a pan alone. */
    static CookerLight of(List<YardLight> lights) {
        List<YardLight> bright = lights.stream().map(YardLight::inStrongestSun).toList();
        return of(lights, bright.equals(lights) ? Optional.empty() : Optional.of(of(bright, Optional.empty())));
    }

    private static CookerLight of(List<YardLight> lights, Optional<CookerLight> strongest) {
        YardRisks standing = new YardRisks(lights.get(0));
        return new CookerLight(standing, lights.size() > 1 ? new YardRisks(lights.get(1)) : standing, strongest);
    }

    /** The same in the strongest sun, which may be this one. */
    public CookerLight inStrongestSun() {
        return strongest.orElse(this);
    }

    /** How far people must stay away from the focus, m: the farthest that light gets unpleasant in the strongest sun; 0 if it nowhere does. */
    public double people() {
        CookerLight bright = inStrongestSun();
        return Math.max(bright.cook(), away(bright.taken, Hazard.DISCOMFORT));
    }

    /** The same in this sun for who cooks, as long as the pan is in place, m. */
    public double cook() {
        return away(standing, Hazard.DISCOMFORT);
    }

    /** How far things that burn must stay away in the strongest sun, m; 0 if nothing can. */
    public double things() {
        CookerLight bright = inStrongestSun();
        return Math.max(away(bright.standing, Hazard.SMOULDER), away(bright.taken, Hazard.SMOULDER));
    }

    /** The cooker. */
    public Scenario scenario() {
        return taken.light().scenario();
    }

    /** The hottest light of the cooker, sun included, W/m². */
    public double cautionFlux() {
        return taken.hottest().light().together();
    }

    /** With two standard errors. */
    private static double away(YardRisks risks, Hazard hazard) {
        return risks.farthest(hazard)
                .map(d -> d.value() + 2 * d.standardError())
                .orElse(0.0);
    }
}
