package simmerpoint.report;

import java.awt.image.BufferedImage;
import simmerpoint.answer.Item;
import simmerpoint.answer.design.DesignAnswer;
import simmerpoint.drawing.Sheet;
import simmerpoint.drawing.chart.DesignChart;
import simmerpoint.drawing.output.PngFile;
import simmerpoint.quantities.OneLine;
import simmerpoint.study.design.DesignResult;
import simmerpoint.units.UnitSystem;

/** The trade between panels and diameter as a picture: one stair for each amount of watts. */
public final class DesignPicture {
    private DesignPicture() {}

    /** The bytes of a PNG file for {@code result}, its words in the units of {@code system}. */
    public static byte[] bytes(DesignResult result, UnitSystem system) {
        return PngFile.bytes(sheet(result, system));
    }

    /** The picture itself, 1400 pixels wide. */
    public static BufferedImage image(DesignResult result, UnitSystem system) {
        return PngFile.image(sheet(result, system));
    }

    private static Sheet sheet(DesignResult result, UnitSystem system) {
        String title = OneLine.of(result.scenario().title());
        return new Sheet(title.isEmpty() ? "Dishes that do it" : title)
                .subtitle(((Item.Sentence) DesignAnswer.of(result, system)
                                .sections()
                                .get(0)
                                .items()
                                .get(0))
                        .text())
                .gap(14)
                .with(new DesignChart(result, system))
                .caption(
                        "Each stair: the smallest dish for its number of panels, with the focal length that suits it best."
                                + " Dots: traced anew; aim \u00b1: drift that costs a tenth of the watts.");
    }
}
