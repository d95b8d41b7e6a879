package simmerpoint.dish.shape;

/**
 * Sheet or film that stands out between two ribs as a parabola, w = h·(x² − y²/tan²β)/X² in the sector's frame: h midway at the rim,
 * where x = X, and nothing at the ribs, y = ±x·tan β. So stands a membrane under pressure, w'' = p/T (any text on membranes), and so, with
 * h = −R²·sin²β/4f, sheet that hangs back to the paraboloid behind the chord from rib to rib.
 */
final class BulgeBetweenRibs implements Deformation {
    private final Sectors sectors;
    private final double perSquare;
    private final double acrossSquare;

    /**
     * In so many sectors.
     *
     * @param metres towards the light, midway between two ribs at the rim
     * @param sectors how many
     * @param rim distance of the ribs' tips from the axis, m
     */
    BulgeBetweenRibs(double metres, int sectors, double rim) {
        this.sectors = new Sectors(sectors);
        double middle = rim * this.sectors.cosHalf;
        perSquare = metres / (middle * middle);
        acrossSquare = 1 / (this.sectors.tanHalf * this.sectors.tanHalf);
    }

    @Override
    public void add(double x, double y, Displacement to) {
        int k = sectors.at(x, y);
        double cos = sectors.cos[k];
        double sin = sectors.sin[k];
        double along = x * cos + y * sin;
        double across = y * cos - x * sin;
        double slopeAlong = 2 * perSquare * along;
        double slopeAcross = -2 * perSquare * acrossSquare * across;
        to.add(
                perSquare * (along * along - acrossSquare * across * across),
                slopeAlong * cos - slopeAcross * sin,
                slopeAlong * sin + slopeAcross * cos);
    }
}
