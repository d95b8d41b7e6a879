package simmerpoint.report;

import java.awt.image.BufferedImage;
import simmerpoint.answer.Item;
import simmerpoint.answer.day.YearAnswer;
import simmerpoint.drawing.Sheet;
import simmerpoint.drawing.chart.LevelKey;
import simmerpoint.drawing.chart.YearChart;
import simmerpoint.drawing.output.PngFile;
import simmerpoint.quantities.OneLine;
import simmerpoint.study.day.YearResult;
import simmerpoint.units.UnitSystem;

/** A year as a picture: month by hour, each cell in the colour of its heat level with its watts printed in it. */
public final class YearPicture {
    private YearPicture() {}

    /** The bytes of a PNG file for {@code result}, its words in the units of {@code system}. */
    public static byte[] bytes(YearResult result, UnitSystem system) {
        return PngFile.bytes(sheet(result, system));
    }

    /** The picture itself, 1400 pixels wide. */
    public static BufferedImage image(YearResult result, UnitSystem system) {
        return PngFile.image(sheet(result, system));
    }

    private static Sheet sheet(YearResult result, UnitSystem system) {
        String title = OneLine.of(result.scenario().title());
        return new Sheet((title.isEmpty() ? "The year " : title + ", ") + result.year())
                .subtitle(((Item.Sentence) YearAnswer.of(result, system)
                                .sections()
                                .get(0)
                                .items()
                                .get(0))
                        .text())
                .gap(14)
                .with(new YearChart(result))
                .gap(10)
                .with(LevelKey.of())
                .caption(
                        "Watts taken up by the pan on the 21st of the month under a clear sky, at full hours of the clock"
                                + " of " + result.days().get(0).day().site().zone()
                                + "; hours in which it simmers or better.");
    }
}
