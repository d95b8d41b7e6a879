package simmerpoint.heat;

/**
 * The wall above the water line: a fin on the wetted wall. Decision: a fin and not a node of its own, since its heat
 * capacity is small and conduction along the sheet is what ties it to the water. Textbook fin with an insulated end
 * (Incropera et al., chapter 3, from memory): efficiency tanh(mL)/(mL), m² = h/(k·thickness), h the outer coefficient at
 * the water's temperature. The light it takes up is spread evenly over it; by linearity the same efficiency says what
 * share of light minus loss flows on into the pan (derived here). Steam on its inside, which would warm it further, is
 * left out below boiling; it counts within the spread of the losses.
 */
final class DryWallFin {
    private final PanFace face;
    private final double length;
    private final double conductance;

    /**
     * The wall of this pan above its water line.
     *
     * @param face the band of wall; area 0 if the pan is brimful
     * @param length its height, m
     * @param conductance conductivity × thickness of the sheet, W/K
     */
    DryWallFin(PanFace face, double length, double conductance) {
        this.face = face;
        this.length = length;
        this.conductance = conductance;
    }

    /** tanh(x)/x. */
    static double efficiency(double x) {
        return x < 1e-4 ? 1 - x * x / 3 : Math.tanh(x) / x;
    }

    /** What it loses of its own heat and of its light; in a brimful pan nothing, since there is no dry wall. */
    Losses at(double kelvin, double lightWatts) {
        if (!(face.area() > 0)) {
            return Losses.NONE;
        }
        double air = face.airCoefficient(kelvin);
        double radiation = face.radiationCoefficient(kelvin);
        double all = face.factor() * (air + radiation);
        double share = efficiency(length * Math.sqrt(all / conductance));
        Losses bare = face.at(kelvin);
        double thrownOff = (1 - share) * lightWatts / (air + radiation);
        return new Losses(
                share * bare.convectionWatts() + thrownOff * air,
                share * bare.radiationWatts() + thrownOff * radiation,
                0);
    }
}
