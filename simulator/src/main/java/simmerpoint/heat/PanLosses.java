package simmerpoint.heat;

/**
 * Losses of a pan with water: underside and wetted wall at the water's temperature, the wall above the water line as
 * {@link DryWallFin}, and the lid or the open water above. The water line is where it stands at the start: half of the water
 * gone would change the dry losses by a few percent.
 *
 * <p>Left out: the resistance between sheet and water (a few K at 20 kW/m²), heat through handles and stand, warm air that
 * rises from a hot mirror, and what the mirror reflects of the pan's own radiation. They are part of the third by which
 * such a sum is known ({@link LossSpread}).
 */
public final class PanLosses implements LossModel {
    private final PanFace underside;
    private final PanFace wetWall;
    private final DryWallFin dryWall;
    private final TopLosses top;

    /**
     * For one pan, filling and weather.
     *
     * @param vessel the pan
     * @param waterKilograms what is in it, not more than it holds
     * @param around air and sky
     * @param factors how far this pan differs from the correlations
     */
    public PanLosses(ThermalPan vessel, double waterKilograms, Surroundings around, LossFactors factors) {
        ArgumentChecks.within("water", waterKilograms, 0, vessel.brimfulKilograms(), "kg");
        double wet = vessel.waterLineMetres(waterKilograms);
        double dry = vessel.pan().heightMetres() - wet;
        double factor = factors.dry();
        underside =
                PanFace.level(PanFace.Kind.UNDERSIDE, vessel, vessel.underside().emissivity(), around, factor);
        wetWall = PanFace.wall(vessel, wet, vessel.wetWall().emissivity(), around, factor);
        dryWall = new DryWallFin(
                PanFace.wall(vessel, dry, vessel.dryWall().emissivity(), around, factor),
                dry,
                vessel.material().conductivity() * vessel.sheetThickness());
        top = vessel.lidOn() ? new LidLosses(vessel, around, factors) : new OpenWaterLosses(vessel, around, factors);
    }

    @Override
    public Losses at(double waterCelsius, AbsorbedLight absorbed) {
        double kelvin = PhysicalConstants.kelvin(waterCelsius);
        return underside
                .at(kelvin)
                .plus(wetWall.at(kelvin))
                .plus(dryWall.at(kelvin, absorbed.dryWallWatts()))
                .plus(top.at(kelvin, absorbed.lidWatts()));
    }
}
