package simmerpoint.scenario;

import java.util.Map;
import simmerpoint.heat.HeatLevelThresholds;
import simmerpoint.heat.PanContents;
import simmerpoint.heat.PanMaterial;
import simmerpoint.heat.Surroundings;
import simmerpoint.heat.ThermalPan;
import simmerpoint.heat.UndersidePlate;
import simmerpoint.heat.balance.CookingModel;
import simmerpoint.heat.balance.HeatLevelModel;
import simmerpoint.pan.Pan;

/**
 * What the cook brings: the pan as a vessel, what is in it, the air about it, and where heat levels begin.
 *
 * @param vessel the scenario's pan with its material, mass, skins and lid
 * @param contents the water in it and its temperature at the start
 * @param around air, wind, altitude, humidity, sky
 * @param levels borders of the heat levels
 */
public record CookingSetup(ThermalPan vessel, PanContents contents, Surroundings around, HeatLevelThresholds levels) {
    /** Mass of a usual pan per m² of its outside by material, kg/m²: 1 mm of steel (common practice). */
    private static final double USUAL_SHEET = 8;

    /** The same: aluminium of 2.5 mm, cast iron of 4 mm, copper of 1.5 mm, glass of 4.5 mm, clay of 8 mm (common practice). */
    private static final Map<String, Double> SHEETS =
            Map.of("aluminium", 7.0, "cast iron", 30.0, "copper", 13.0, "glass", 10.0, "clay", 16.0);

    private static final double USUAL_FILLING = 0.4;

    /**
     * What is usual about a pan: steel a millimetre thick, lid on, water at 20 °C to two fifths of its height, air of
     * 20 °C with a breath of wind (1 m/s), near sea level.
     */
    public static CookingSetup usual(Pan pan) {
        PanMaterial steel = PanMaterial.find("stainless steel").orElseThrow();
        ThermalPan vessel = ThermalPan.of(pan, steel, usualKilograms(pan, steel, true), true);
        PanContents water = new PanContents(usualWater(vessel), 20);
        return new CookingSetup(vessel, water, Surroundings.outdoors(20, 1, 0), HeatLevelThresholds.USUAL);
    }

    /** The balance of this pan, water and weather. */
    public CookingModel cooking() {
        return new CookingModel(vessel, contents, around);
    }

    /** The heat levels of this pan, water and weather. */
    public HeatLevelModel heatLevels() {
        return new HeatLevelModel(cooking(), levels);
    }

    /** Mass of a usual pan of that size and material, kg; its lid counts if it is on. */
    public static double usualKilograms(Pan pan, PanMaterial material, boolean lidOn) {
        double r = pan.radiusMetres();
        double outside = (lidOn ? 2 : 1) * Math.PI * r * r + 2 * Math.PI * r * pan.heightMetres();
        return usualSheet(material) * outside;
    }

    /** The same with an underside of its own. */
    public static double usualKilograms(Pan pan, PanMaterial material, boolean lidOn, UndersidePlate plate) {
        double level = Math.PI * pan.radiusMetres() * pan.radiusMetres();
        return usualKilograms(pan, material, lidOn) - usualSheet(material) * level + plate.kilograms(level);
    }

    /** Thickness of a usual sheet of that material, m. */
    public static double usualThickness(PanMaterial material) {
        return usualSheet(material) / material.density();
    }

    private static double usualSheet(PanMaterial material) {
        return SHEETS.getOrDefault(material.name(), USUAL_SHEET);
    }

    /** Water to two fifths of the pan's height, kg. */
    public static double usualWater(ThermalPan vessel) {
        return USUAL_FILLING * vessel.brimfulKilograms();
    }
}
