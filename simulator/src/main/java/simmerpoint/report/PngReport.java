package simmerpoint.report;

import java.awt.image.BufferedImage;
import simmerpoint.study.TraceResult;
import simmerpoint.units.UnitSystem;

/**
 * The flux map as a picture: for a pan the plane of its underside from above with the sun's side at the top, the lid, and
 * the unrolled wall from outside; for a bare disc its plane as seen from the dish. All on one colour scale.
 */
public final class PngReport {
    private PngReport() {}

    /** The bytes of a PNG file for {@code result}, lengths in the units of {@code system}. */
    public static byte[] bytes(TraceResult result, UnitSystem system) {
        return Pictures.png(image(result, system));
    }

    /** The picture itself, 1400 pixels wide. */
    public static BufferedImage image(TraceResult result, UnitSystem system) {
        FluxSheet sheet = new FluxSheet(result, system);
        return Pictures.painted(FluxSheet.WIDTH, sheet.height(), sheet::paint);
    }
}
