package simmerpoint.viewer.pan;

import java.nio.IntBuffer;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import simmerpoint.drawing.FluxColours;
import simmerpoint.target.FluxMap;

/** A flux map as pixels, one colour per cell. */
final class FluxImage {
    private static final int OPAQUE = 0xFF000000;

    private FluxImage() {}

    /** The map in its frame; flux of {@code top} W/m² and more gets the last colour. */
    static WritableImage of(MapFrame frame, double top) {
        int width = (int) frame.width();
        int height = (int) frame.height();
        return new WritableImage(new PixelBuffer<>(
                width, height, IntBuffer.wrap(pixels(frame, top)), PixelFormat.getIntArgbPreInstance()));
    }

    /** Colours row by row from the upper left, opaque. */
    static int[] pixels(MapFrame frame, double top) {
        int width = (int) frame.width();
        int height = (int) frame.height();
        FluxMap map = frame.map();
        boolean wall = frame.facing() == Facing.FIRST_RIGHT;
        int[] across = cells(width, wall ? map.columns() : map.rows(), false);
        int[] down = cells(height, wall ? map.rows() : map.columns(), frame.facing() != Facing.FIRST_DOWN);
        int[] cells = new int[map.flux().length];
        for (int k = 0; k < cells.length; k++) {
            cells[k] = OPAQUE | FluxColours.rgb(map.flux()[k] / top);
        }
        int[] pixels = new int[width * height];
        for (int py = 0; py < height; py++) {
            for (int px = 0; px < width; px++) {
                int i = wall ? across[px] : down[py];
                int j = wall ? down[py] : across[px];
                pixels[py * width + px] = cells[j * map.columns() + i];
            }
        }
        return pixels;
    }

    /** Which cell each pixel shows. */
    private static int[] cells(int pixels, int count, boolean backwards) {
        int[] out = new int[pixels];
        for (int p = 0; p < pixels; p++) {
            int cell = Math.min(count - 1, (int) ((p + 0.5) / pixels * count));
            out[p] = backwards ? count - 1 - cell : cell;
        }
        return out;
    }
}
