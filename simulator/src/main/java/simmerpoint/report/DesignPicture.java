package simmerpoint.report;

import simmerpoint.answer.design.DesignAnswer;
import simmerpoint.answer.words.Cautions;
import simmerpoint.drawing.Sheet;
import simmerpoint.drawing.chart.DesignChart;
import simmerpoint.quantities.OneLine;
import simmerpoint.study.design.DesignResult;
import simmerpoint.units.UnitSystem;

/** The trade between panels and diameter as a picture: one stair for each amount of watts. */
final class DesignPicture {
    private DesignPicture() {}

    static Sheet sheet(DesignResult result, UnitSystem system) {
        String title = OneLine.of(result.scenario().title());
        return new Sheet(title.isEmpty() ? "Dishes that do it" : title)
                .subtitle(FirstSentence.of(DesignAnswer.of(result, system)))
                .gap(14)
                .with(new DesignChart(result, system))
                .caption(
                        "Each stair: the smallest dish for its number of panels, with the focal length that suits it best."
                                + " Dots: traced again, with how often to aim.")
                .caption(Cautions.ALWAYS);
    }
}
