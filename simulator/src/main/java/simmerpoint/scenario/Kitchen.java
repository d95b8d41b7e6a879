package simmerpoint.scenario;

import simmerpoint.heat.Contents;
import simmerpoint.heat.LevelTable;
import simmerpoint.heat.Surroundings;
import simmerpoint.heat.Vessel;
import simmerpoint.heat.VesselMaterial;
import simmerpoint.pan.Pan;

/**
 * What the cook brings: the pan as a vessel, what is in it, the air about it, and where heat levels begin.
 *
 * @param vessel the scenario's pan with its material, mass, skins and lid
 * @param contents the water in it and its temperature at the start
 * @param around air, wind, altitude, humidity, sky
 * @param levels borders of the heat levels
 */
public record Kitchen(Vessel vessel, Contents contents, Surroundings around, LevelTable levels) {
    /** Mass of a usual pan per m² of its outside, lid included: 1 mm of steel (common practice), kg/m². */
    private static final double USUAL_SHEET = 8;

    private static final double USUAL_FILLING = 0.4;

    /**
     * A usual kitchen about a pan: steel a millimetre thick, lid on, water at 20 °C to two fifths of its height, air of
     * 20 °C with a breath of wind (1 m/s), near sea level.
     */
    public static Kitchen usual(Pan pan) {
        double r = pan.radiusMetres();
        double outside = 2 * Math.PI * r * r + 2 * Math.PI * r * pan.heightMetres();
        VesselMaterial steel = VesselMaterial.find("stainless steel").orElseThrow();
        Vessel vessel = Vessel.of(pan, steel, USUAL_SHEET * outside, true);
        Contents water = new Contents(USUAL_FILLING * vessel.brimfulKilograms(), 20);
        return new Kitchen(vessel, water, Surroundings.outdoors(20, 1, 0), LevelTable.USUAL);
    }
}
