package simmerpoint.report;

import simmerpoint.answer.Answer;
import simmerpoint.answer.Section;
import simmerpoint.answer.trial.TrialAnswer;
import simmerpoint.drawing.Sheet;
import simmerpoint.drawing.chart.TrialChart;
import simmerpoint.quantities.OneLine;
import simmerpoint.quantities.Version;
import simmerpoint.trial.TrialResult;
import simmerpoint.units.UnitSystem;

/** Every log beside the model as a picture. */
final class TrialPicture {
    private TrialPicture() {}

    static Sheet sheet(TrialResult result, UnitSystem units) {
        String title = OneLine.of(result.scenario().scenario().title());
        Answer answer = TrialAnswer.brief(result, units);
        Section first = answer.sections().get(0);
        Sheet sheet = new Sheet(title.isEmpty() ? "A trial" : title)
                .subtitle(first.heading() + ".")
                .gap(14);
        result.fit()
                .ifPresent(fit -> fit.curves()
                        .forEach(curve ->
                                sheet.with(new TrialChart(curve, units)).gap(16)));
        return sheet.caption(
                "Expected: the cookers that the scenario may turn out to be, in the light and weather of the log;"
                        + " fitted: by all that is known now. Simmerpoint " + Version.text());
    }
}
