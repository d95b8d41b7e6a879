package simmerpoint.report;

import java.awt.image.BufferedImage;
import simmerpoint.study.pan.PanResult;
import simmerpoint.units.UnitSystem;

/** The three moves as a picture: watts and hottest spot over each, heat levels as bands. */
public final class PanPicture {
    private PanPicture() {}

    /** The bytes of a PNG file for {@code result}, lengths in the units of {@code system}. */
    public static byte[] bytes(PanResult result, UnitSystem system) {
        return Sheets.png(image(result, system));
    }

    /** The picture itself, 1400 pixels wide. */
    public static BufferedImage image(PanResult result, UnitSystem system) {
        PanSheet sheet = new PanSheet(result, system);
        return Sheets.image(PanSheet.WIDTH, sheet.height(), sheet::paint);
    }
}
