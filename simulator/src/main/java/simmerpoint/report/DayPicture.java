package simmerpoint.report;

import simmerpoint.answer.day.DayAnswer;
import simmerpoint.answer.words.Cautions;
import simmerpoint.answer.words.TimeWords;
import simmerpoint.drawing.Sheet;
import simmerpoint.drawing.Stack;
import simmerpoint.drawing.chart.DayChart;
import simmerpoint.drawing.chart.LevelLegend;
import simmerpoint.quantities.OneLine;
import simmerpoint.study.day.DayResult;
import simmerpoint.units.UnitSystem;

/** A day as a picture: the cooking power before bands of the heat levels, the sun's elevation, the beam. */
final class DayPicture {
    private DayPicture() {}

    static Sheet sheet(DayResult result, UnitSystem system) {
        String title = OneLine.of(result.scenario().title());
        String date = TimeWords.date(result.plan().date());
        Sheet sheet = new Sheet((title.isEmpty() ? "The day, " : title + ", ") + date)
                .subtitle(FirstSentence.of(DayAnswer.of(result, system)));
        if (result.curve().isEmpty()) {
            return sheet;
        }
        return sheet.gap(14)
                .with(new DayChart(result))
                .with(LevelLegend.of())
                .caption("Clock of " + result.day().site().zone()
                        + ". Clear sky; dots: traced hours; pale bands: four in five such cookers, and how far models"
                        + " and haze of a clear sky differ.")
                .caption(Cautions.ALWAYS);
    }

    /** The same for the page, of a day with sun. */
    static HtmlFigure figure(DayResult result) {
        return HtmlFigure.drawing(
                new Stack(new DayChart(result), LevelLegend.of()),
                "Cooking power over the hours of "
                        + TimeWords.date(result.plan().date())
                        + " before bands of the heat levels, the sun’s height and the beam; the tables below hold the same"
                        + " figures.",
                "A clear day by the clock of " + result.day().site().zone()
                        + ". Dots: traced hours; pale bands: four in five such cookers, and how far models"
                        + " and haze of a clear sky differ.");
    }
}
