package simmerpoint.report;

import java.util.List;
import simmerpoint.answer.trial.TrialAnswer;
import simmerpoint.drawing.chart.TrialChart;
import simmerpoint.trial.TrialResult;
import simmerpoint.trial.fit.FittedCurve;
import simmerpoint.units.UnitSystem;

/** What logs of the built cooker say, as a chapter of the page. */
public final class TrialChapter {
    private TrialChapter() {}

    /** With a picture of every log. */
    public static HtmlChapter of(TrialResult result, UnitSystem units) {
        HtmlChapter chapter = HtmlChapter.of("trial", "The cooker as built and tried", TrialAnswer.of(result, units));
        List<FittedCurve> curves = result.fit().map(fit -> fit.curves()).orElse(List.of());
        for (int k = curves.size() - 1; k >= 0; k--) {
            chapter = chapter.with(
                    1,
                    HtmlFigure.drawing(
                            new TrialChart(curves.get(k), units),
                            "Water measured, expected and fitted over the minutes of a log, and measured less fitted.",
                            "A log beside the model. Band: four in five of the cookers that the scenario may turn out to be."));
        }
        return chapter;
    }
}
