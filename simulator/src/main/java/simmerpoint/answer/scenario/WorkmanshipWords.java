package simmerpoint.answer.scenario;

import simmerpoint.answer.words.FigureFormat;
import simmerpoint.dish.built.BuildErrors;
import simmerpoint.scenario.Scenario;

/** What a maker's tolerances come to. */
record WorkmanshipWords(Scenario scenario, FigureFormat figures) {
    /** One sentence without its full stop. */
    String sentence() {
        BuildErrors.Part all = scenario.workmanship().all();
        return "tolerances come to slope errors of " + mrad(all.slopeAlong()) + " along the ribs and "
                + mrad(all.slopeAcross()) + " across, panels tilted by " + mrad(all.tiltAlong()) + " along and "
                + mrad(all.tiltAcross()) + " across" + slits(all) + "; with the mirror's own: slope error "
                + mrad(scenario.built().mirror().slopeErrorRadians()) + ", panel tilt "
                + mrad(scenario.built().mirror().panelTiltRadians());
    }

    private String slits(BuildErrors.Part all) {
        return all.gap() > 0 ? ", slits of " + figures.length(all.gap(), 2) : "";
    }

    private static String mrad(double radians) {
        return ScenarioAnswer.milliradians(radians);
    }
}
