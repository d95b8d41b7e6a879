package simmerpoint.dish.shape;

/**
 * Sheet that hangs between two ribs under its own weight, free to turn on them: across, the beam's curve 16/5·(u − 2u³ + u⁴) of its
 * middle, u from 0 at one rib to 1 at the other, and growing with the fourth power of the width (D = 5qL⁴/384EI; any text on strength of
 * materials). In the sector's frame, with p = x² and q = y²/tan²β, that is −h·(5p² − 6pq + q²)/5X⁴.
 *
 * <p>The weight that bends sheet at a slope is the part square to it: sin α − cos α·x/2f of that of a dish on its back, per unit of plan
 * and along the axis, x towards the upper edge (derived here: its part along the normal, put back on the axis).
 */
final class SagBetweenRibs implements Deformation {
    private final Sectors sectors;
    private final double perFourth;
    private final double acrossSquare;
    private final double back;
    private final double downPerMetre;

    /**
     * In so many sectors.
     *
     * @param metres midway between two ribs at the rim, the dish on its back
     * @param sectors how many
     * @param rim distance of the ribs' tips from the axis, m
     * @param focalLength m
     * @param weight where it pulls
     */
    SagBetweenRibs(double metres, int sectors, double rim, double focalLength, WeightDirection weight) {
        this.sectors = new Sectors(sectors);
        perFourth = -metres / (5 * Math.pow(rim * this.sectors.cosHalf, 4));
        acrossSquare = 1 / (this.sectors.tanHalf * this.sectors.tanHalf);
        back = weight.back();
        downPerMetre = weight.down() / (2 * focalLength);
    }

    @Override
    public void add(double x, double y, Displacement to) {
        int k = sectors.at(x, y);
        double cos = sectors.cos[k];
        double sin = sectors.sin[k];
        double along = x * cos + y * sin;
        double across = y * cos - x * sin;
        double p = along * along;
        double q = acrossSquare * across * across;
        double load = perFourth * (back - downPerMetre * x);
        double shape = 5 * p * p - 6 * p * q + q * q;
        double slopeAlong = load * 4 * along * (5 * p - 3 * q);
        double slopeAcross = load * 4 * acrossSquare * across * (q - 3 * p);
        to.add(
                load * shape,
                slopeAlong * cos - slopeAcross * sin - perFourth * downPerMetre * shape,
                slopeAlong * sin + slopeAcross * cos);
    }
}
