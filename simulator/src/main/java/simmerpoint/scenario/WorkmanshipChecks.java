package simmerpoint.scenario;

import java.util.Locale;
import simmerpoint.dish.CutKind;
import simmerpoint.dish.CutTrait;
import simmerpoint.dish.built.BuildErrors;

/** What must hold between a maker's tolerances and the dish they are for. */
final class WorkmanshipChecks {
    private static final double MOST_RADIANS = 0.2;

    private WorkmanshipChecks() {}

    /** Tolerances of ribs need ribs, tolerances of panels need panels. */
    static void check(ScenarioValues v, Problems problems) {
        CutKind cut = CutKeys.kind(v);
        for (String path : CutKeys.needing(CutTrait.RIBS)) {
            if (!cut.has(CutTrait.RIBS) && v.number(path) > 0) {
                problems.add(v.line(path), path, "a dish cut as " + cut.word() + " has no ribs; leave it out");
            }
        }
        if (!cut.has(CutTrait.SEAMS) && v.number("workmanship.panel-edge") > 0) {
            problems.add(
                    v.line("workmanship.panel-edge"),
                    "workmanship.panel-edge",
                    "a dish cut as " + cut.word() + " has no panels that somebody cuts; leave it out");
        }
    }

    /** Errors beyond what can be traced make no dish. */
    static void check(Scenario scenario, ScenarioValues v, Problems problems) {
        BuildErrors errors = scenario.workmanship();
        double tilt = Math.hypot(scenario.mirror().panelTiltRadians(), errors.tilt());
        double slope = Math.hypot(scenario.mirror().slopeErrorRadians(), errors.slope());
        if (!(Math.max(tilt, slope) <= MOST_RADIANS)) {
            problems.add(
                    v.line("workmanship"),
                    "workmanship",
                    String.format(
                            Locale.ROOT,
                            "these tolerances make a slope error of %.0f mrad and tilt the panels by %.0f mrad; beyond 200"
                                    + " mrad there is no mirror to speak of",
                            1000 * slope,
                            1000 * tilt));
        }
    }
}
