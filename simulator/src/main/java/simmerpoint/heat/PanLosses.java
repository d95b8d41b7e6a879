package simmerpoint.heat;

/**
 * Losses of a pan with water: underside and wetted wall at the water's temperature, the wall above the water line as
 * {@link DryWall}, and the lid or the open water above. The water line is where it stands at the start: half of the water
 * gone would change the dry losses by a few percent.
 *
 * <p>Left out: the resistance between sheet and water (a few K at 20 kW/m²), heat through handles and stand, warm air that
 * rises from a hot mirror, and what the mirror reflects of the pan's own radiation. They are part of the third by which
 * such a sum is known ({@link LossSpread}).
 */
public final class PanLosses implements LossModel {
    private final Face underside;
    private final Face wetWall;
    private final DryWall dryWall;
    private final Top top;

    /**
     * For one pan, filling and weather.
     *
     * @param vessel the pan
     * @param waterKilograms what is in it, not more than it holds
     * @param around air and sky
     * @param factors how far this pan differs from the correlations
     */
    public PanLosses(Vessel vessel, double waterKilograms, Surroundings around, LossFactors factors) {
        Checks.within("water", waterKilograms, 0, vessel.brimfulKilograms(), "kg");
        double wet = vessel.waterLineMetres(waterKilograms);
        double dry = vessel.pan().heightMetres() - wet;
        double factor = factors.dry();
        underside = Face.level(Face.Kind.UNDERSIDE, vessel, vessel.underside().emissivity(), around, factor);
        wetWall = Face.wall(vessel, wet, vessel.wetWall().emissivity(), around, factor);
        dryWall = new DryWall(
                Face.wall(vessel, dry, vessel.dryWall().emissivity(), around, factor),
                dry,
                vessel.material().conductivity() * vessel.sheetThickness());
        top = vessel.lidOn() ? new LidTop(vessel, around, factors) : new OpenTop(vessel, around, factors);
    }

    @Override
    public Losses at(double waterCelsius, Absorbed absorbed) {
        double kelvin = Constants.kelvin(waterCelsius);
        return underside
                .at(kelvin)
                .plus(wetWall.at(kelvin))
                .plus(dryWall.at(kelvin, absorbed.dryWallWatts()))
                .plus(top.at(kelvin, absorbed.lidWatts()));
    }
}
