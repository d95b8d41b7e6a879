package simmerpoint.dish;

/**
 * Size of the largest panel, one that reaches to the rim, as a builder would measure it; of a tile both are its width.
 *
 * @param rimMetres length of its edge at the rim, without the gap, m
 * @param ribMetres its length along the rib, without the gap between rings and along the curve if it is bent, m
 */
public record PanelSize(double rimMetres, double ribMetres) {
    /** The shorter of both, m. */
    public double narrowestMetres() {
        return Math.min(rimMetres, ribMetres);
    }
}
