package simmerpoint.report;

import java.awt.image.BufferedImage;
import simmerpoint.study.compare.Comparison;
import simmerpoint.units.UnitSystem;

/** Compared cookers as a picture: bars of watts with error bars, the best on top; the best 64 if there are more. */
public final class ComparePicture {
    private ComparePicture() {}

    /** The bytes of a PNG file for {@code comparison}, its words in the units of {@code system}. */
    public static byte[] bytes(Comparison comparison, UnitSystem system) {
        return Sheets.png(image(comparison, system));
    }

    /** The picture itself, 1400 pixels wide. */
    public static BufferedImage image(Comparison comparison, UnitSystem system) {
        CompareSheet sheet = new CompareSheet(comparison, system);
        return Sheets.image(CompareSheet.WIDTH, sheet.height(), sheet::paint);
    }
}
