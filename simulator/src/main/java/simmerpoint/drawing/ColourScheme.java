package simmerpoint.drawing;

/** The three ways in which drawings look. */
public enum ColourScheme {
    /** Dark on light, for a screen. */
    LIGHT,
    /** Light on dark. */
    DARK,
    /** On white paper, and in files of pictures. */
    PRINT;

    /** The colour of an ink, 0xAARRGGBB. */
    public int argb(Ink ink) {
        return ink.argb(this);
    }
}
