package simmerpoint.answer;

import simmerpoint.dish.built.BuildErrors;
import simmerpoint.scenario.Scenario;

/** What a maker's tolerances come to. */
record WorkmanshipWords(Scenario scenario, Figures figures) {
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

    /** Size of one cause: its errors in all directions together, per axis; or its slit. */
    String size(BuildErrors.Cause cause) {
        BuildErrors.Part part = scenario.workmanship().parts().get(cause);
        if (part == null) {
            return "";
        }
        if (part.gap() > 0) {
            return figures.length(part.gap(), 2);
        }
        double squares = part.tiltAlong() * part.tiltAlong()
                + part.tiltAcross() * part.tiltAcross()
                + part.slopeAlong() * part.slopeAlong()
                + part.slopeAcross() * part.slopeAcross();
        return mrad(Math.sqrt(squares / 2));
    }

    private static String mrad(double radians) {
        return ScenarioAnswer.milliradians(radians);
    }
}
