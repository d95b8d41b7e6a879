package simmerpoint.drawing.map;

/** Colours of differences: blue for less, white for none, brown for more; both get darker the larger it is. */
final class DifferenceColours {
    private static final int LESS = 0x1B4F8A;
    private static final int MORE = 0xC25B12;
    private static final int WHITE = 0xFFFFFF;
    private static final int OPAQUE = 0xFF000000;

    private DifferenceColours() {}

    /** The colour (0xFFRRGGBB) of a share of the scale, −1 to 1. */
    static int argb(double share) {
        double part = Math.min(1, Math.abs(share));
        int end = share < 0 ? LESS : MORE;
        int colour = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            int from = WHITE >> shift & 255;
            int to = end >> shift & 255;
            colour |= (int) Math.round(from + part * (to - from)) << shift;
        }
        return OPAQUE | colour;
    }
}
