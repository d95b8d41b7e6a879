package simmerpoint.heat;

/**
 * A lid of glass: light goes through it to water and food. A pane of index 1.52 throws back (1 − R)/(1 + R) less than all, R = ((n
 * − 1)/(n + 1))², by Fresnel at steep incidence (derived here); 4 mm of ordinary glass keep 6 % (extinction 15 per metre, from memory).
 * Drops under the lid, which throw some more back, are neglected.
 */
public final class GlassLid {
    static final double INDEX = 1.52;
    static final double KEPT = 0.06;

    /** Infrared emissivity of glass: handbooks, from memory, 0.84 to 0.94. */
    static final double EMISSIVITY = 0.9;

    private GlassLid() {}

    /** Share of the light that gets through. */
    static double transmittance() {
        return PanCover.clear(INDEX) * (1 - KEPT);
    }

    private static double below() {
        return transmittance() * PanLight.OPEN_TOP_SHARE;
    }

    /** What lid and inside take up together, and how the lid radiates. */
    public static SurfaceOptics optics() {
        return new SurfaceOptics(KEPT + below(), EMISSIVITY);
    }

    /** Share of that which goes through to the inside. */
    public static double throughShare() {
        return below() / (KEPT + below());
    }
}
