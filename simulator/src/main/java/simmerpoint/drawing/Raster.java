package simmerpoint.drawing;

/** A picture of coloured points, row by row from the top. A canvas may keep what it makes of it for as long as it lives. */
public final class Raster {
    private final int width;
    private final int height;
    private final int[] argb;

    /** Of {@code width * height} colours 0xAARRGGBB, not changed after. */
    public Raster(int width, int height, int... argb) {
        if (argb.length != width * height) {
            throw new IllegalArgumentException(argb.length + " colours for " + width + " by " + height);
        }
        this.width = width;
        this.height = height;
        this.argb = argb;
    }

    /** Points in a row. */
    public int width() {
        return width;
    }

    /** Rows. */
    public int height() {
        return height;
    }

    /** All colours, not to be changed. */
    public int[] argb() {
        return argb;
    }
}
