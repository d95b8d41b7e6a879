package simmerpoint.drawing;

/** A picture of coloured points, row by row from the top. A canvas may keep what it makes of it for as long as it lives. */
public final class Raster {
    private final int width;
    private final int height;
    private final int[] argb;
    private final boolean sharp;

    /** Of {@code width * height} colours 0xAARRGGBB, not changed after; where it is enlarged, colours run into each other. */
    public Raster(int width, int height, int... argb) {
        this(width, height, false, argb);
    }

    private Raster(int width, int height, boolean sharp, int... argb) {
        if (argb.length != width * height) {
            throw new IllegalArgumentException(argb.length + " colours for " + width + " by " + height);
        }
        this.width = width;
        this.height = height;
        this.argb = argb;
        this.sharp = sharp;
    }

    /** The same of cells: where it is enlarged, each point is a rectangle of its colour. */
    public static Raster cells(int width, int height, int... argb) {
        return new Raster(width, height, true, argb);
    }

    /** Points in a row. */
    public int width() {
        return width;
    }

    /** Rows. */
    public int height() {
        return height;
    }

    /** Whether its points stay rectangles where it is enlarged. */
    public boolean sharp() {
        return sharp;
    }

    /** All colours, not to be changed. */
    public int[] argb() {
        return argb;
    }
}
