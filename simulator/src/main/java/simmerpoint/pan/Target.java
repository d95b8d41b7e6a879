package simmerpoint.pan;

/** The target of the light: a pan, or a bare disc for plain optics. */
public sealed interface Target permits Pan, Plane {
    /** Radius of the underside or of the disc, m. */
    double radiusMetres();
}
