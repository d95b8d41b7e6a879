package simmerpoint.report;

import simmerpoint.answer.day.YearAnswer;
import simmerpoint.answer.words.Cautions;
import simmerpoint.drawing.Sheet;
import simmerpoint.drawing.chart.LevelLegend;
import simmerpoint.drawing.chart.YearChart;
import simmerpoint.quantities.OneLine;
import simmerpoint.study.day.YearResult;
import simmerpoint.units.UnitSystem;

/** A year as a picture: month by hour, each cell in the colour of its heat level with its watts printed in it. */
final class YearPicture {
    private YearPicture() {}

    static Sheet sheet(YearResult result, UnitSystem system) {
        String title = OneLine.of(result.scenario().title());
        return new Sheet((title.isEmpty() ? "The year " : title + ", ") + result.year())
                .subtitle(FirstSentence.of(YearAnswer.of(result, system)))
                .gap(14)
                .with(new YearChart(result))
                .gap(10)
                .with(LevelLegend.of())
                .caption("Cooking power, W, on the 21st of the month under a clear sky, at full hours of the clock"
                        + " of " + result.days().get(0).day().site().zone()
                        + "; hours in which it simmers or better.")
                .caption(Cautions.ALWAYS);
    }
}
