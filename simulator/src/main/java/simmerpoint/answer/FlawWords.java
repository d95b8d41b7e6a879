package simmerpoint.answer;

import simmerpoint.dish.built.BuildErrors;
import simmerpoint.dish.mirror.Mirror;
import simmerpoint.scenario.Scenario;
import simmerpoint.setup.Aim;
import simmerpoint.study.budget.Flaw;

/**
 * Names of a scenario's flaws, with their size where one figure tells it.
 *
 * @param scenario whose flaws
 * @param figures in the reader's units
 */
public record FlawWords(Scenario scenario, Figures figures) {
    /** The name alone: "slope error", "flat tiles". */
    public String name(Flaw flaw) {
        return switch (flaw.key()) {
            case "flat-panels" -> scenario.dish().cut().shapeLossName();
            case "hub-and-gaps" -> DishWords.bare(scenario.dish());
            default -> flaw.name();
        };
    }

    /** Name and size: "slope error 5.0 mrad". */
    public String sized(Flaw flaw) {
        String size = size(flaw);
        return name(flaw) + (size.isEmpty() ? "" : Figures.NBSP + size);
    }

    /** The same for a sentence: "slope error of 5.0 mrad". */
    public String told(Flaw flaw) {
        String size = size(flaw);
        return name(flaw) + (size.isEmpty() ? "" : " of " + size);
    }

    private String size(Flaw flaw) {
        Mirror mirror = scenario.mirror();
        Aim aim = scenario.aim();
        return switch (flaw.key()) {
            case "slope-error" -> ScenarioAnswer.milliradians(mirror.slopeErrorRadians());
            case "panel-tilt" -> ScenarioAnswer.milliradians(mirror.panelTiltRadians());
            case "beam-spread" -> ScenarioAnswer.milliradians(mirror.beamSpreadRadians());
            case "rib-cut" -> made(BuildErrors.Cause.RIB_CUT);
            case "rib-set" -> made(BuildErrors.Cause.RIB_SET);
            case "sag" -> made(BuildErrors.Cause.SAG);
            case "panel-edge" -> made(BuildErrors.Cause.PANEL_EDGE);
            case "bubbles" -> made(BuildErrors.Cause.BUBBLES);
            case "reflectance" -> figures.percent(mirror.reflectance());
            case "scatter" -> figures.percent(mirror.scattered());
            case "dust" -> figures.percent(mirror.dust());
            case "drift" -> degrees(aim.driftUpRadians(), aim.driftSideRadians());
            case "turn" -> degrees(aim.turnUpRadians(), aim.turnSideRadians());
            case "jitter" -> ScenarioAnswer.milliradians(aim.jitterRadians());
            default -> "";
        };
    }

    private String made(BuildErrors.Cause cause) {
        return new WorkmanshipWords(scenario, figures).size(cause);
    }

    private static String degrees(double up, double side) {
        return Figures.rounded(Math.toDegrees(Math.hypot(up, side)), 2) + "\u00b0";
    }
}
