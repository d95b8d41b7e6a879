package simmerpoint.drawing;

/** Gives every ink a colour. */
@FunctionalInterface
public interface Palette {
    /** The colour of an ink, 0xAARRGGBB. */
    int argb(Ink ink);
}
