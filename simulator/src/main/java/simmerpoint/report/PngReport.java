package simmerpoint.report;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import simmerpoint.study.trace.TraceResult;
import simmerpoint.units.UnitSystem;

/**
 * The flux map as a picture: for a pan the plane of its underside from above with the sun's side at the top, the lid, and
 * the unrolled wall from outside; for a bare disc its plane as seen from the dish. All on one colour scale.
 */
public final class PngReport {
    private PngReport() {}

    /** The bytes of a PNG file for {@code result}, lengths in the units of {@code system}. */
    public static byte[] bytes(TraceResult result, UnitSystem system) {
        ImageIO.setUseCache(false);
        ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 18);
        try {
            ImageIO.write(image(result, system), "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /** The picture itself, 1400 pixels wide. */
    public static BufferedImage image(TraceResult result, UnitSystem system) {
        FluxSheet sheet = new FluxSheet(result, system);
        BufferedImage image = new BufferedImage(FluxSheet.WIDTH, sheet.height(), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            g.setColor(Color.WHITE);
            g.fillRect(0, 0, image.getWidth(), image.getHeight());
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            sheet.paint(g);
        } finally {
            g.dispose();
        }
        return image;
    }
}
