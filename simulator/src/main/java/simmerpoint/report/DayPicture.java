package simmerpoint.report;

import java.awt.image.BufferedImage;
import simmerpoint.answer.Item;
import simmerpoint.answer.day.DayAnswer;
import simmerpoint.answer.words.TimeWords;
import simmerpoint.drawing.Sheet;
import simmerpoint.drawing.Stack;
import simmerpoint.drawing.chart.DayChart;
import simmerpoint.drawing.chart.LevelKey;
import simmerpoint.drawing.output.PngFile;
import simmerpoint.quantities.OneLine;
import simmerpoint.study.day.DayResult;
import simmerpoint.units.UnitSystem;

/** A day as a picture: the watts taken up before bands of the heat levels, the sun's elevation, the beam. */
public final class DayPicture {
    private DayPicture() {}

    /** The bytes of a PNG file for {@code result}, its words in the units of {@code system}. */
    public static byte[] bytes(DayResult result, UnitSystem system) {
        return PngFile.bytes(sheet(result, system));
    }

    /** The picture itself, 1400 pixels wide. */
    public static BufferedImage image(DayResult result, UnitSystem system) {
        return PngFile.image(sheet(result, system));
    }

    private static Sheet sheet(DayResult result, UnitSystem system) {
        String title = OneLine.of(result.scenario().title());
        String date = TimeWords.date(result.plan().date());
        Sheet sheet = new Sheet((title.isEmpty() ? "The day, " : title + ", ") + date)
                .subtitle(((Item.Sentence) DayAnswer.of(result, system)
                                .sections()
                                .get(0)
                                .items()
                                .get(0))
                        .text());
        if (result.curve().isEmpty()) {
            return sheet;
        }
        return sheet.gap(14)
                .with(new DayChart(result))
                .with(LevelKey.of())
                .caption("Clock of " + result.day().site().zone()
                        + ". Clear sky; dots: traced hours; pale bands about the curves: how far models of a clear sky"
                        + " differ.");
    }

    /** The same for the page, of a day with sun. */
    static HtmlFigure figure(DayResult result) {
        return HtmlFigure.drawing(
                new Stack(new DayChart(result), LevelKey.of()),
                "The watts taken up over the hours of "
                        + TimeWords.date(result.plan().date())
                        + " before bands of the heat levels, the sun’s height and the beam; the tables below hold the same"
                        + " figures.",
                "A clear day by the clock of " + result.day().site().zone()
                        + ". Dots: traced hours; pale bands about the curves: how far models of a clear sky differ.");
    }
}
