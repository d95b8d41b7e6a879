package simmerpoint.scenario.checks;

import java.math.BigDecimal;
import java.util.Optional;
import simmerpoint.heat.GlassLid;
import simmerpoint.heat.HeatLevelThresholds;
import simmerpoint.heat.PanContents;
import simmerpoint.heat.PanCover;
import simmerpoint.heat.PanMaterial;
import simmerpoint.heat.SurfaceOptics;
import simmerpoint.heat.Surroundings;
import simmerpoint.heat.ThermalPan;
import simmerpoint.heat.UndersidePlate;
import simmerpoint.pan.Finish;
import simmerpoint.pan.FinishCatalogue;
import simmerpoint.pan.Pan;
import simmerpoint.pan.Support;
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
        return new Pan(v.number("pan.diameter"), v.number("pan.height"), finish(v, "pan.finish"))
                .withSupport(support(v));
    }

    private static Support support(ScenarioValues v) {
        double width = v.number("stand.grate.width");
        return Support.grate(
                        v.count("stand.grate.bars"),
                        width,
                        v.number("stand.grate.length"),
                        v.number("stand.grate.spacing"),
                        v.number("stand.grate.turn"))
                .withRing(v.number("stand.grate.ring"), width)
                .withArm(v.number("stand.arm.width"), v.number("stand.arm.length"), v.number("stand.arm.from"));
    }

    static ThermalPan vessel(ScenarioValues v) {
        Pan pan = pan(v);
        PanMaterial material = PanMaterial.find(v.text("pan.material")).orElseThrow();
        boolean lidOn = v.isOn("pan.lid");
        SurfaceOptics wall = skin(v, "pan.wall-finish");
        boolean glass = v.text("pan.lid-material").equals("glass");
        Optional<UndersidePlate> plate = plate(v, material);
        double usual = plate.map(own -> CookingSetup.usualKilograms(pan, material, lidOn, own))
                .orElseGet(() -> CookingSetup.usualKilograms(pan, material, lidOn));
        double open = Math.pow(v.number("pan.opening", 2 * pan.radiusMetres()) / (2 * pan.radiusMetres()), 2);
        return new ThermalPan(
                pan,
                material,
                v.number("pan.mass", usual),
                skin(v, "pan.underside-finish"),
                wall,
                wall,
                glass ? GlassLid.optics() : skin(v, "pan.lid-finish"),
                lidOn,
                glass ? GlassLid.throughShare() : 0,
                plate,
                PanCover.find(v.text("pan.cover")),
                Math.min(1, open));
    }

    /** What an underside of its own weighs, kg; 0 without one. */
    static double undersideKilograms(ScenarioValues v) {
        double radius = v.number("pan.diameter") / 2;
        PanMaterial material = PanMaterial.find(v.text("pan.material")).orElseThrow();
        return plate(v, material)
                .map(own -> own.kilograms(Math.PI * radius * radius))
                .orElse(0.0);
    }

    /** The underside's own sheet if one of its keys is given; the usual thickness of a material that is given alone. */
    private static Optional<UndersidePlate> plate(ScenarioValues v, PanMaterial rest) {
        if (!v.has("pan.underside-material") && !v.has("pan.underside-thickness")) {
            return Optional.empty();
        }
        PanMaterial own = v.has("pan.underside-material")
                ? PanMaterial.find(v.text("pan.underside-material")).orElseThrow()
                : rest;
        return Optional.of(
                new UndersidePlate(own, v.number("pan.underside-thickness", CookingSetup.usualThickness(own))));
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
