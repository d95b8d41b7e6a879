package simmerpoint.heat;

import java.util.Arrays;
import java.util.Optional;

/**
 * A second skin round a closed pan, which lets light in and keeps the wind off: a clear bag for ovens, or a glass bowl over it and one
 * under it. It encloses all faces at the same distance and has the area of the face inside it; what it keeps of the light, how long it takes to
 * warm (a bowl of a kilogram makes the water some 5 % later), and vapour that wets it are left out.
 */
public enum PanCover {
    /**
     * Oven film, thin and clear. Light: two faces of index 1.6 (polyester, from memory), none kept. It lets some heat radiation
     * through, for which its emissivity is counted high: our choice, 0.8.
     */
    BAG("bag", 1.6, 0, 0.8, 0.01),
    /** Glass of 4 mm, as of {@link GlassLid}. */
    GLASS_BOWL("glass bowl", GlassLid.INDEX, GlassLid.KEPT, GlassLid.EMISSIVITY, 0.02);

    private final String word;
    private final double index;
    private final double kept;
    private final double emissivity;
    private final double gap;

    PanCover(String word, double index, double kept, double emissivity, double gap) {
        this.word = word;
        this.index = index;
        this.kept = kept;
        this.emissivity = emissivity;
        this.gap = gap;
    }

    /** The one of that word; empty for none. */
    public static Optional<PanCover> find(String word) {
        return Arrays.stream(values()).filter(cover -> cover.word.equals(word)).findFirst();
    }

    /** As the scenario names it. */
    public String word() {
        return word;
    }

    /** Share of the light that gets through. */
    public double transmittance() {
        return clear(index) * (1 - kept);
    }

    /** Infrared emissivity of both faces. */
    public double emissivity() {
        return emissivity;
    }

    /** Usual distance from the pan, m: engineering judgement. */
    public double gapMetres() {
        return gap;
    }

    /** Share that the two faces of a pane let through, by Fresnel at steep incidence: (1 − R)/(1 + R), R = ((n − 1)/(n + 1))². */
    static double clear(double index) {
        double r = Math.pow((index - 1) / (index + 1), 2);
        return (1 - r) / (1 + r);
    }
}
