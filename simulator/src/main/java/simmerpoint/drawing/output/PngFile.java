package simmerpoint.drawing.output;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;
import simmerpoint.drawing.Box;
import simmerpoint.drawing.ColourScheme;
import simmerpoint.drawing.Drawing;
import simmerpoint.drawing.Raster;

/** Drawings as pictures of 1400 pixels across: 1000 units, usual letters about 17 pixels high. */
public final class PngFile {
    /** Width of every picture, pixels. */
    public static final int WIDTH = 1400;

    /** Width of every picture, units. */
    public static final double UNITS = 1000;

    private static final double SCALE = WIDTH / UNITS;

    private PngFile() {}

    /** The bytes of a PNG file. */
    public static byte[] bytes(Drawing drawing) {
        return bytes(image(drawing));
    }

    /** The picture itself, on white. */
    public static BufferedImage image(Drawing drawing) {
        double height = drawing.height(UNITS, Java2dCanvas.textMetrics());
        BufferedImage image =
                new BufferedImage(WIDTH, (int) Math.ceil(SCALE * height - 1e-6), BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            g.setColor(Color.WHITE);
            g.fillRect(0, 0, image.getWidth(), image.getHeight());
            g.scale(SCALE, SCALE);
            drawing.draw(new Java2dCanvas(g, ColourScheme.PRINT), new Box(0, 0, UNITS, height));
        } finally {
            g.dispose();
        }
        return image;
    }

    /** The bytes of a raster's PNG file. */
    public static byte[] bytes(Raster raster) {
        return bytes(Java2dCanvas.image(raster));
    }

    private static byte[] bytes(BufferedImage image) {
        ImageIO.setUseCache(false);
        ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 17);
        try {
            ImageIO.write(image, "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
