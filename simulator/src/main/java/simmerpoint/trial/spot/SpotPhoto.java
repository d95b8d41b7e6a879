package simmerpoint.trial.spot;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import javax.imageio.ImageIO;
import simmerpoint.input.InputFileException;

/**
 * A photograph of the spot on a card, taken square to it. Brightness is that of sRGB made linear (IEC 61966-2-1, from memory), less what the
 * frame of the picture has; below a fiftieth of the brightest it counts as none. Cameras that do not keep to sRGB make it uncertain.
 *
 * @param map its light
 * @param profile its figures
 * @param saturated share of the pixels of the bright half in which a colour is as bright as the file can say
 */
public record SpotPhoto(SpotMap map, SpotProfile profile, double saturated) {
    /** More of them than that make the spot look wider than it is. */
    public static final double TOO_MANY = 0.01;

    private static final int FULL = 250;
    private static final int MOST_CELLS = 400;
    private static final int MOST_PIXELS = 100_000_000;

    /**
     * Reads a PNG or JPEG.
     *
     * @param pixelsPerMetre on the card
     */
    static SpotPhoto read(Path file, double pixelsPerMetre) throws InputFileException {
        BufferedImage image = image(file);
        int pool = Math.max(1, (Math.max(image.getWidth(), image.getHeight()) + MOST_CELLS - 1) / MOST_CELLS);
        int columns = image.getWidth() / pool;
        int rows = image.getHeight() / pool;
        if (columns < 8 || rows < 8) {
            throw new InputFileException(file, "the picture is too small; 8 pixels and more each way are needed.");
        }
        double[] light = new double[columns * rows];
        double[] full = new double[columns * rows];
        for (int y = 0; y < rows * pool; y++) {
            for (int x = 0; x < columns * pool; x++) {
                int rgb = image.getRGB(x, y);
                int cell = y / pool * columns + x / pool;
                light[cell] += linear(rgb) / (pool * pool);
                full[cell] += isFull(rgb) ? 1.0 / (pool * pool) : 0;
            }
        }
        double most = withoutFrame(light, columns);
        if (!(most > 0)) {
            throw new InputFileException(file, "no spot is brighter than the frame of the picture.");
        }
        double bright = 0;
        double saturated = 0;
        for (int k = 0; k < light.length; k++) {
            if (light[k] > most / 2) {
                bright++;
                saturated += full[k];
            }
        }
        SpotMap map = new SpotMap(light, columns, pool / pixelsPerMetre).withoutFaint();
        SpotProfile all = map.profile(Double.POSITIVE_INFINITY);
        return new SpotPhoto(map, map.profile(map.reach(all.x(), all.y())), saturated / bright);
    }

    /** How far from the centroid it sees all round, m. */
    double reach() {
        return map.reach(profile.x(), profile.y());
    }

    private static BufferedImage image(Path file) throws InputFileException {
        if (!Files.isRegularFile(file)) {
            throw new InputFileException(file, "there is no such picture; a PNG or JPEG file is allowed.");
        }
        try {
            BufferedImage image = ImageIO.read(file.toFile());
            if (image == null) {
                throw new InputFileException(file, "this is no picture; PNG and JPEG are allowed.");
            }
            if ((long) image.getWidth() * image.getHeight() > MOST_PIXELS) {
                throw new InputFileException(file, "the picture has more than 100 million pixels.");
            }
            return image;
        } catch (IOException e) {
            throw new InputFileException(file, e);
        }
    }

    private static boolean isFull(int rgb) {
        return Math.max(rgb >> 16 & 255, Math.max(rgb >> 8 & 255, rgb & 255)) >= FULL;
    }

    private static double linear(int rgb) {
        return 0.2126 * linearByte(rgb >> 16 & 255)
                + 0.7152 * linearByte(rgb >> 8 & 255)
                + 0.0722 * linearByte(rgb & 255);
    }

    private static double linearByte(int value) {
        double c = value / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    /** Takes off the middle brightness of the outermost cells; the most that is left. */
    private static double withoutFrame(double[] light, int columns) {
        int rows = light.length / columns;
        double[] frame = new double[2 * columns + 2 * rows];
        int n = 0;
        for (int k = 0; k < light.length; k++) {
            boolean edge = k < columns || k >= light.length - columns || k % columns == 0 || k % columns == columns - 1;
            if (edge) {
                frame[n++] = light[k];
            }
        }
        Arrays.sort(frame, 0, n);
        double dark = frame[n / 2];
        double most = 0;
        for (int k = 0; k < light.length; k++) {
            light[k] = Math.max(0, light[k] - dark);
            most = Math.max(most, light[k]);
        }
        return most;
    }
}
