package simmerpoint.heat.losses;

import simmerpoint.heat.AbsorbedLight;
import simmerpoint.heat.ArgumentChecks;
import simmerpoint.heat.PhysicalConstants;
import simmerpoint.heat.Surroundings;
import simmerpoint.heat.ThermalPan;

/**
 * Losses of a pan with water: underside and wetted wall at the water's temperature, the wall above the water line as {@link
 * DryWallFin}, and lid or open water. The water line is that at the start: the loss of half the water would change the dry
 * losses by a few percent.
 *
 * <p>Neglects the resistance between sheet and water (a few K at 20 kW/m²), conduction through handles and stand, warm air
 * rising from a hot mirror, and the pan's own radiation reflected by the mirror. They are part of the uncertainty in {@link
 * LossSpread}.
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
     * @param waterKilograms not more than it holds
     * @param surroundings air and sky
     * @param factors on the correlations
     */
    public PanLosses(ThermalPan vessel, double waterKilograms, Surroundings surroundings, LossFactors factors) {
        this(
                vessel,
                line(vessel, waterKilograms),
                surroundings,
                factors,
                top(vessel, vessel.pan().heightMetres() - line(vessel, waterKilograms), surroundings, factors));
    }

    private PanLosses(ThermalPan vessel, double wet, Surroundings surroundings, LossFactors factors, TopLosses losses) {
        double dry = vessel.pan().heightMetres() - wet;
        double factor = factors.dry();
        underside =
                PanFace.level(PanFace.Kind.UNDERSIDE, vessel, vessel.underside().emissivity(), surroundings, factor);
        wetWall = PanFace.wall(vessel, wet, vessel.wetWall().emissivity(), surroundings, factor);
        dryWall = new DryWallFin(
                PanFace.wall(vessel, dry, vessel.dryWall().emissivity(), surroundings, factor),
                dry,
                vessel.material().conductivity() * vessel.sheetThickness());
        top = losses;
    }

    /** The same of oil up to {@code line} (m), without a lid: nothing evaporates from it, and the rim shelters it as it does water. */
    public static PanLosses ofOil(ThermalPan vessel, double line, Surroundings surroundings, LossFactors factors) {
        double rim = vessel.pan().heightMetres() - line;
        double share = OpenWaterLosses.windShare(rim / vessel.pan().diameterMetres());
        PanFace open = PanFace.level(
                PanFace.Kind.LID,
                vessel,
                OpenWaterLosses.WATER_EMISSIVITY,
                surroundings.withWind(share * surroundings.windMetresPerSecond()),
                factors.dry());
        return new PanLosses(vessel, line, surroundings, factors, (kelvin, light) -> open.at(kelvin));
    }

    private static double line(ThermalPan vessel, double waterKilograms) {
        ArgumentChecks.within("water", waterKilograms, 0, vessel.brimfulKilograms(), "kg");
        return vessel.waterLineMetres(waterKilograms);
    }

    /** Without a lid the shoulder of a kettle is still one, which leaks nothing. */
    private static TopLosses top(ThermalPan vessel, double rim, Surroundings surroundings, LossFactors factors) {
        if (vessel.lidOn()) {
            return new LidLosses(vessel, surroundings, factors);
        }
        TopLosses open = new OpenWaterLosses(vessel, rim, surroundings, factors);
        double share = vessel.openShare();
        if (share == 1) {
            return open;
        }
        TopLosses shoulder = new LidLosses(vessel, surroundings, factors);
        return (kelvin, light) -> open.at(kelvin, light)
                .times(share)
                .plus(shoulder.at(kelvin, light).withSteam(0).times(1 - share));
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
