package simmerpoint.scenario.checks;

import java.util.Locale;
import simmerpoint.dish.built.BuildErrors;
import simmerpoint.scenario.Problems;
import simmerpoint.scenario.Scenario;
import simmerpoint.scenario.values.ScenarioValues;

/** Whether the errors that a maker's tolerances cause can be traced. */
final class WorkmanshipChecks {
    private static final double MOST_RADIANS = 0.2;

    private WorkmanshipChecks() {}

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
