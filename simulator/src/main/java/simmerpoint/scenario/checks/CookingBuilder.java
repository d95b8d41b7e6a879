package simmerpoint.scenario.checks;

import java.math.BigDecimal;
import simmerpoint.heat.HeatLevelThresholds;
import simmerpoint.heat.PanContents;
import simmerpoint.heat.PanMaterial;
import simmerpoint.heat.SurfaceOptics;
import simmerpoint.heat.Surroundings;
import simmerpoint.heat.ThermalPan;
import simmerpoint.pan.Finish;
import simmerpoint.pan.FinishCatalogue;
import simmerpoint.pan.Pan;
import simmerpoint.scenario.CookingSetup;
import simmerpoint.scenario.values.ScenarioValues;

/** Makes pan, water, air and heat levels out of checked keys. */
final class CookingBuilder {
    private static final BigDecimal ZERO_CELSIUS = new BigDecimal("273.15");

    private CookingBuilder() {}

    static CookingSetup cooking(ScenarioValues v) {
        ThermalPan vessel = vessel(v);
        PanContents contents = new PanContents(water(v, vessel), celsius(v, "pan.water-temperature"));
        HeatLevelThresholds levels = new HeatLevelThresholds(
                celsius(v, "heat-levels.hold"),
                v.number("heat-levels.simmer-below-boiling"),
                v.number("heat-levels.boil-steam"),
                v.number("heat-levels.fast-boil-steam"));
        return new CookingSetup(vessel, contents, around(v), levels);
    }

    static Pan pan(ScenarioValues v) {
        return new Pan(v.number("pan.diameter"), v.number("pan.height"), finish(v, "pan.finish"));
    }

    static ThermalPan vessel(ScenarioValues v) {
        Pan pan = pan(v);
        PanMaterial material = PanMaterial.find(v.text("pan.material")).orElseThrow();
        boolean lidOn = v.isOn("pan.lid");
        SurfaceOptics wall = skin(v, "pan.wall-finish");
        return new ThermalPan(
                pan,
                material,
                v.number("pan.mass", CookingSetup.usualKilograms(pan, material, lidOn)),
                skin(v, "pan.underside-finish"),
                wall,
                wall,
                skin(v, "pan.lid-finish"),
                lidOn);
    }

    static double water(ScenarioValues v, ThermalPan vessel) {
        return v.number("pan.water", CookingSetup.usualWater(vessel));
    }

    static Surroundings around(ScenarioValues v) {
        double atPlace = v.hasSection("place") ? v.number("place.altitude") : 0;
        return new Surroundings(
                celsius(v, "air.temperature"),
                v.number("air.wind"),
                v.number("air.altitude", atPlace),
                v.number("air.humidity"),
                v.text("air.sky").equals("open"));
    }

    /** A temperature in °C, in decimals, so that 20 °C comes back as 20. */
    static double celsius(ScenarioValues v, String path) {
        return new BigDecimal(Double.toString(v.number(path)))
                .subtract(ZERO_CELSIUS)
                .doubleValue();
    }

    private static SurfaceOptics skin(ScenarioValues v, String path) {
        return SurfaceOptics.of(finish(v, v.has(path) ? path : "pan.finish"));
    }

    private static Finish finish(ScenarioValues v, String path) {
        return FinishCatalogue.find(v.text(path)).orElseThrow();
    }
}
