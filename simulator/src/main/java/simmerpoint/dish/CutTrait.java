package simmerpoint.dish;

/** What is true of some cuts and decides what can be said, given or mended of a dish. */
public enum CutTrait {
    /** It follows the plan's paraboloid: part of a convex bowl, so that no panel blocks light of another. */
    PARABOLOID,
    /** It consists of panels, each of which can be glued askew. */
    PANELS,
    /** Its panels are cut by the maker and meet in seams as wide as the plan's gap. */
    SEAMS,
    /** Its panels are stretched over ribs. */
    RIBS,
    /** Its panels fill the outline up to the rim, but for hub and gaps. */
    FULL_RIM,
    /** Its own keys or its file say how large it is and where its focus lies, so that diameter, focal-length and hub are not asked for. */
    OWN_SIZE
}
