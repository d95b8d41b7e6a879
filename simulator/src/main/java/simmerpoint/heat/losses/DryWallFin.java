package simmerpoint.heat.losses;

/**
 * The wall above the water line as a fin on the wetted wall. A fin and not a node of its own, since its heat capacity is
 * small and conduction along the sheet couples it to the water. Textbook fin with an insulated end (Incropera et al.,
 * chapter 3, from memory): efficiency tanh(mL)/(mL), m² = h/(k·thickness), h the outer coefficient at the water's
 * temperature. Absorbed light is distributed evenly over it; by linearity the same efficiency is the share of light minus
 * loss that is conducted into the pan (derived here). Neglects steam on its inside below boiling, which would warm it
 * further.
 */
final class DryWallFin {
    private final PanFace face;
    private final double length;
    private final double conductance;

    /**
     * For one pan.
     *
     * @param face the band of wall; area 0 if the pan is full
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

    /** Losses of its heat and of the light that is not conducted into the pan; none if the pan is full. */
    Losses at(double kelvin, double lightWatts) {
        if (!(face.area() > 0)) {
            return Losses.NONE;
        }
        double air = face.convectionCoefficient(kelvin);
        double radiation = face.radiationCoefficient(kelvin);
        double all = face.factor() * (air + radiation);
        double share = efficiency(length * Math.sqrt(all / conductance));
        Losses isothermal = face.at(kelvin);
        double rejectedLight = (1 - share) * lightWatts / (air + radiation);
        return new Losses(
                share * isothermal.convectionWatts() + rejectedLight * air,
                share * isothermal.radiationWatts() + rejectedLight * radiation,
                0);
    }
}
