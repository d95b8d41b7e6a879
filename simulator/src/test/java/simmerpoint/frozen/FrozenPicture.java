package simmerpoint.frozen;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Locale;
import java.util.Optional;
import javax.imageio.ImageIO;

/**
 * Pictures reduced to the mean colours of blocks of 4 by 4 pixels: letters may be smoothed in another way, but no line may
 * move by its width.
 */
final class FrozenPicture {
    private static final int BLOCK = 4;
    private static final int FAR = 24;
    private static final int ONE_IN = 2000;

    private FrozenPicture() {}

    /** The reduced picture as bytes of a PNG. */
    static byte[] reduced(byte[] png) throws IOException {
        BufferedImage read = ImageIO.read(new ByteArrayInputStream(png));
        BufferedImage full = new BufferedImage(read.getWidth(), read.getHeight(), BufferedImage.TYPE_INT_RGB);
        full.createGraphics().drawImage(read, 0, 0, null);
        int[] pixels = ((DataBufferInt) full.getRaster().getDataBuffer()).getData();
        BufferedImage small =
                new BufferedImage(full.getWidth() / BLOCK, full.getHeight() / BLOCK, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < small.getHeight(); y++) {
            for (int x = 0; x < small.getWidth(); x++) {
                small.setRGB(x, y, mean(pixels, full.getWidth(), BLOCK * (y * full.getWidth() + x)));
            }
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(small, "png", out);
        return out.toByteArray();
    }

    private static int mean(int[] pixels, int width, int first) {
        int mean = 0;
        for (int shift = 0; shift < 24; shift += 8) {
            int sum = 0;
            for (int k = 0; k < BLOCK * BLOCK; k++) {
                sum += (pixels[first + k / BLOCK * width + k % BLOCK] >> shift) & 255;
            }
            mean |= (sum / (BLOCK * BLOCK)) << shift;
        }
        return mean;
    }

    /** How two reduced pictures differ; empty if they do not to speak of. */
    static Optional<String> difference(byte[] before, byte[] now) throws IOException {
        BufferedImage was = ImageIO.read(new ByteArrayInputStream(before));
        BufferedImage is = ImageIO.read(new ByteArrayInputStream(now));
        if (was.getWidth() != is.getWidth() || was.getHeight() != is.getHeight()) {
            return Optional.of("was " + size(was) + ", is " + size(is) + " pixels");
        }
        int far = 0;
        String first = "";
        for (int y = 0; y < was.getHeight(); y++) {
            for (int x = 0; x < was.getWidth(); x++) {
                if (apart(was.getRGB(x, y), is.getRGB(x, y)) > FAR) {
                    first = far == 0 ? "at " + BLOCK * x + ", " + BLOCK * y : first;
                    far++;
                }
            }
        }
        int blocks = was.getWidth() * was.getHeight();
        return far * ONE_IN <= blocks
                ? Optional.empty()
                : Optional.of(far + " of " + blocks + " blocks have another colour, the first " + first);
    }

    private static String size(BufferedImage image) {
        return BLOCK * image.getWidth() + " x " + BLOCK * image.getHeight();
    }

    private static int apart(int a, int b) {
        int apart = 0;
        for (int shift = 0; shift < 24; shift += 8) {
            apart = Math.max(apart, Math.abs((a >> shift & 255) - (b >> shift & 255)));
        }
        return apart;
    }

    /** What tells one machine's fonts from another's: with other fonts pictures cannot be compared. */
    static String fonts() {
        StringBuilder text = new StringBuilder();
        for (int style : new int[] {Font.PLAIN, Font.BOLD}) {
            double width = new Font(Font.SANS_SERIF, style, 20)
                    .getStringBounds("Sunlight on the outline 0123456789", new FontRenderContext(null, true, true))
                    .getWidth();
            text.append(String.format(Locale.ROOT, "%.2f%n", width));
        }
        return text.toString();
    }
}
